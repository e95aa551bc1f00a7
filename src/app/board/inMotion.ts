import { create } from "zustand";

/** What a hand is dragging just now: a handle of the drawing or a number of the description; null while none does. */
export const useInMotion = create<{ readonly by: "handle" | "number" | null }>()(() => ({ by: null }));
