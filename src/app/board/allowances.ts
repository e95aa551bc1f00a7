import { create } from "zustand";
import type { patternAllowances } from "../../drawing/pattern/patternAllowances";

/**
 * How the board gets what the shop adds to a pattern. Fetched with the changes of the job, for the job the page begins with
 * has no allowances; null until then.
 */
export const useAllowances = create<{ readonly of: typeof patternAllowances | null }>()(() => ({ of: null }));
