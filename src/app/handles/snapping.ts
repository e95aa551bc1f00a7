import { create } from "zustand";

/** Whether a dragged handle takes round numbers and what fits; Alt does the other while it is held. */
export const useSnapping = create<{ readonly on: boolean }>()(() => ({ on: true }));
