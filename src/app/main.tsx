import { createRoot } from "react-dom/client";
import { App } from "./App";
import { workOffline } from "./offline/workOffline";
import { warmAtFirstTouch } from "./screen/warm";
import { fetchChanges, sayNotFetched } from "./store/changing";
import { isAnythingKept } from "./store/isAnythingKept";
import { useSettings } from "./store/settings";
import "./theme/theme.css";

// Before the first paint, so that the page does not flash in the other theme.
document.documentElement.dataset.theme = useSettings.getState().theme;

const root = document.getElementById("root");
if (!root) throw new Error("the page has no place for the program");
window.addEventListener("load", () => void workOffline());
warmAtFirstTouch();
if (isAnythingKept()) await fetchChanges(true).catch(sayNotFetched);
createRoot(root).render(<App />);
