import { create } from "zustand";

/** How many times deviations are drawn too large on the board. */
export const useExaggeration = create<{ readonly times: number }>()(() => ({ times: 1 }));
