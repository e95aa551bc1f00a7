import { create } from "zustand";

const signs = ["pointermove", "pointerdown", "keydown", "focusin"] as const;

/** Whether a hand has been on the page yet: a pointer or a key used. */
export const useTouch = create<{ readonly touched: boolean }>()(() => ({ touched: false }));

/** Watches for the first sign of a hand. */
export function watchForTouch(): void {
  const onSign = () => {
    for (const sign of signs) window.removeEventListener(sign, onSign);
    useTouch.setState({ touched: true });
  };
  for (const sign of signs) window.addEventListener(sign, onSign, { passive: true });
}
