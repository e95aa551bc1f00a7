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

const place = document.getElementById("root");
if (!place) throw new Error("the page has no place for the program");
const root = createRoot(place);
const begin = () => root.render(<App />);
window.addEventListener("load", () => void workOffline());
warmAtFirstTouch();
// Never awaited at the top: what is fetched needs this file, which would wait for it.
if (isAnythingKept()) void fetchChanges(true).catch(sayNotFetched).then(begin);
else begin();
