import { create } from "zustand";

/** Whether the smooth curve through the stations is shown against the true edge. */
export const useSmooth = create<{ readonly shown: boolean }>()(() => ({ shown: false }));
