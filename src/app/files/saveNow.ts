import { sayNotFetched } from "../store/changing";
import { useApp } from "../store/store";

/** Saves the job in hand as a file. What writes it is there since the page was first touched; when it is not to be had, that is said. */
export function saveNow(): void {
  import("./saveJob").then(({ saveJob }) => saveJob(useApp.getState().development.job)).catch(sayNotFetched);
}
