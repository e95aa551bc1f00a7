import { create } from "zustand";
import type { Shown } from "./camera";

/**
 * What a hand is dragging just now: a handle of the drawing or a number of the description; null while none does. With a handle, the board
 * as it stood when it was taken: while it is dragged, scale and places stay, so that the hand keeps its hold.
 */
export const useInMotion = create<{ readonly by: "handle" | "number" | null; readonly held: Shown | null }>()(() => ({ by: null, held: null }));
