import { create } from "zustand";

const signs = ["pointermove", "pointerdown", "keydown", "focusin"] as const;

/** Milliseconds after which a page nobody touches fetches the rest as well. */
const patience = 3000;

/** Whether a hand has been on the page yet, a pointer or a key used, or it has been looked at for a while. */
export const useTouch = create<{ readonly touched: boolean }>()(() => ({ touched: false }));

/** Watches for the first sign of a hand. */
export function watchForTouch(): void {
  const onSign = () => {
    for (const sign of signs) window.removeEventListener(sign, onSign);
    useTouch.setState({ touched: true });
  };
  for (const sign of signs) window.addEventListener(sign, onSign, { passive: true });
  window.addEventListener("load", () => setTimeout(onSign, patience));
}
