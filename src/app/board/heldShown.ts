import { create } from "zustand";
import type { Shown } from "./camera";

/** The board as it stood when a handle was taken: while it is dragged, scale and places stay, so that the hand keeps its hold. */
export const useHeldShown = create<{ readonly held: Shown | null }>()(() => ({ held: null }));
