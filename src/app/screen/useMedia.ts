import { useSyncExternalStore } from "react";

/** Whether a media query holds now. A browser that cannot say so is taken to be wide and without wishes. */
export function useMedia(query: string): boolean {
  return useSyncExternalStore(
    (changed) => {
      const media = window.matchMedia?.(query);
      media?.addEventListener("change", changed);
      return () => media?.removeEventListener("change", changed);
    },
    () => window.matchMedia?.(query).matches ?? false,
  );
}

/** The window has no margin beside the board: description, board and rod stand one under the other. */
export const narrow = "(max-width: 59.99rem)";

/** The header has no room for every verb: those seldom wanted stand in a menu. */
export const close = "(max-width: 83.99rem)";

/** A phone: all verbs but one stand in the menu. */
export const small = "(max-width: 40rem)";
