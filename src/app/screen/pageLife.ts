import { workOffline } from "../offline/workOffline";
import { lookForEarlier } from "../store/earlier";
import { autosave, say } from "../store/store";

/** What is to be done when the page has come up, and when it is left: nothing typed is lost. */
export function watchPageLife(): void {
  void begin();
  window.addEventListener("load", () => void workOffline());
  window.addEventListener("pagehide", leave);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") autosave.flush();
  });
}

async function begin(): Promise<void> {
  const { slot } = autosave;
  if (await slot.claim()) say({ kind: "open-elsewhere" });
  try {
    if (slot.hasOthers()) await lookForEarlier(slot.key());
  } catch {
    // The browser gives no storage; that has been said.
  }
}

function leave(): void {
  // What stands in a field is made a change, as when the field is left.
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  autosave.flush();
}
