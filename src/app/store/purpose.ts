import { create } from "zustand";

// What the job is looked at for. It stands first in the address, so that a link opens it: "#teach/carry". Changing it changes what the
// margins offer and what the board carries beside the drawing, never the job or the view.

export const purposes = ["develop", "teach", "check"] as const;

export type Purpose = (typeof purposes)[number];

/** Large: the board is lettered for the back of a room. */
export const usePurpose = create<{ readonly purpose: Purpose; readonly large: boolean }>()(() => ({ purpose: purposeIn(window.location.hash) ?? "develop", large: false }));

/** The purpose an address asks for; null when it names none, such as a place on the page. */
export function purposeIn(hash: string): Purpose | null {
  const name = /^#([a-z]+)/.exec(hash)?.[1];
  return purposes.find((one) => one === name) ?? null;
}

window.addEventListener("hashchange", () => {
  const purpose = purposeIn(window.location.hash);
  if (purpose) usePurpose.setState({ purpose });
});
