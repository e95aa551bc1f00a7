import { create } from "zustand";
import type { Slot } from "./slots";

/** Works kept in this browser whose pages are closed, the last one saved first. */
export const useEarlier = create<{ readonly slots: readonly Slot[] }>()(() => ({ slots: [] }));

/** Looks for them; `own` is the slot of this page. Without the part that looks (no network, nothing kept of it) there are none. */
export async function lookForEarlier(own: string): Promise<void> {
  try {
    const { closedSlots } = await import("./closedSlots");
    useEarlier.setState({ slots: await closedSlots(own) });
  } catch {
    useEarlier.setState({ slots: [] });
  }
}
