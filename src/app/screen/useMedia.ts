import { useSyncExternalStore } from "react";

interface Media {
  readonly holds: () => boolean;
  readonly follow: (changed: () => void) => () => void;
}

/** Asked of the browser once each: they are read whenever something is drawn anew. */
const asked = new Map<string, Media>();

/** Whether a media query holds now. A browser that cannot say so is taken to be wide and without wishes. */
export function useMedia(query: string): boolean {
  const { follow, holds } = mediaOf(query);
  return useSyncExternalStore(follow, holds);
}

function mediaOf(query: string): Media {
  const known = asked.get(query);
  if (known) return known;
  const list = window.matchMedia?.(query);
  const media: Media = {
    holds: () => list?.matches ?? false,
    follow: (changed) => {
      list?.addEventListener("change", changed);
      return () => list?.removeEventListener("change", changed);
    },
  };
  asked.set(query, media);
  return media;
}

/** The window has no margin beside the board: description, board and rod stand one under the other. */
export const narrow = "(max-width: 59.99rem)";

/** The header has no room for every verb: those seldom wanted stand in a menu. */
export const close = "(max-width: 83.99rem)";

/** A phone: all verbs but one stand in the menu. */
export const small = "(max-width: 40rem)";
