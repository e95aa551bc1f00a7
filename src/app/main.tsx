import { createRoot } from "react-dom/client";
import { App } from "./App";
import { watchPageLife } from "./screen/pageLife";
import { warmAtFirstTouch } from "./screen/warm";
import { useSettings } from "./store/settings";
import "./theme/theme.css";

// Before the first paint, so that the page does not flash in the other theme.
document.documentElement.dataset.theme = useSettings.getState().theme;

const root = document.getElementById("root");
if (!root) throw new Error("the page has no place for the program");
warmAtFirstTouch();
watchPageLife();
createRoot(root).render(<App />);
