import type { clauseWords } from "../words/clauses";

export type CutWord = Exclude<keyof typeof clauseWords.add, "verb">;

/** The kinds of cut that can be added, in the order of the menu. */
export const cutWords: readonly CutWord[] = ["plane", "hollow", "nose", "ogee", "step", "vee", "free", "round", "rectangle", "slot"];
