import { useTouch, watchForTouch } from "./touch";
import { fetchEditing } from "../description/fetchEditing";

// What only a hand needs is fetched when the page is first touched, not with the page; then it is there before it is asked for.

const parts = [
  fetchEditing,
  () => import("../board/StationLayer"),
  () => import("../rod/AdequacyLine"),
  () => import("./FaultWords"),
  () => import("../describe/changeCuts"),
  () => import("../describe/newCut"),
  () => import("../files/openFile"),
  () => import("../files/saveJob"),
];

/** Fetches the parts at the first sign of a hand. A part that cannot be fetched is asked for again when it is needed. */
export function warmAtFirstTouch(): void {
  useTouch.subscribe(() => void Promise.allSettled(parts.map((part) => part())));
  watchForTouch();
}
