import { create } from "zustand";

// What of teaching stands in the margin: the construction in steps, the sheets, the scheme of marks, or a class set.

export const teachParts = ["steps", "sheets", "marking", "class"] as const;
export type TeachPart = (typeof teachParts)[number];

export const useTeachPart = create<{ readonly part: TeachPart }>()(() => ({ part: "steps" }));
