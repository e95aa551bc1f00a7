import { say } from "./store";

/** Whether the browser keeps work of this program. That it keeps nothing at all is said. */
export function isAnythingKept(): boolean {
  try {
    return Object.keys(localStorage).some((key) => key.startsWith(slotPlace));
  } catch {
    say({ kind: "no-storage" });
    return false;
  }
}

/** The name of every slot begins so. */
export const slotPlace = "flatwright.job";
