import { createRoot } from "react-dom/client";
import { App } from "./App";
import { workOffline } from "./offline/workOffline";
import { followTheme } from "./screen/theme";
import { warmAtFirstTouch } from "./screen/warm";
import { fetchChanges, sayNotFetched } from "./store/changing";
import { isAnythingKept } from "./store/isAnythingKept";
import "./theme/theme.css";

followTheme();

const place = document.getElementById("root");
if (!place) throw new Error("the page has no place for the program");
const root = createRoot(place);
const begin = () => root.render(<App />);
window.addEventListener("load", () => void workOffline());
warmAtFirstTouch();
// Never awaited at the top: what is fetched needs this file, which would wait for it.
if (isAnythingKept()) void fetchChanges(true).catch(sayNotFetched).then(begin);
else begin();
