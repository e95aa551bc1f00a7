// How a drawing of the piece is marked, and what was read off one: a teacher's scheme, a student's sheet.
// Meanings, ranges and defaults of every field: docs/job-format.md and limits.ts.

export interface Marking {
  /** What the teacher allows: mm on the paper, degrees. */
  tolerance: number;
  angle: number;
  /** The girth as π × diameter, stepped off with chords, or either. */
  girth: "exact" | "stepped" | "either";
  items: MarkingItem[];
}

/** One row of the scheme. */
export interface MarkingItem {
  /** Unique in the scheme; small letters, figures and hyphens. */
  id: string;
  text: string;
  /** Above 0: given for what is right. Below 0: taken off for each fault. */
  marks: number;
  /** What decides: the teacher's eye, the readings of a kind, or whether the seam stands where it should. */
  by: "eye" | "girth" | "ordinates" | "angles" | "seam";
}

/** Paper mm : real mm of a drawing. */
export type DrawnScale = "1:1" | "1:2" | "1:5" | "1:10" | "1:20" | "1:50" | "1:100" | "1:200" | "1:500" | "1:1000" | "2:1" | "5:1" | "10:1";

/** What was read off one drawing, as typed. */
export interface ReadingSheet {
  /** The scale of the drawing; null: that of the job's sheets. */
  scale: DrawnScale | null;
  /** Equal spaces; empty: as many as the job has. */
  count: string;
  /** Where the numbering starts, degrees from the front; empty: at the seam. */
  start: string;
  /** Which way it runs: as the pattern's, or the other way. */
  along: "pattern" | "against";
  /** By place: "stretchOut", "top 3", "angle roof-slope". */
  values: TypedText[];
  /** What the teacher's eye gave, by the id of the item. */
  marks: TypedText[];
}

export interface TypedText {
  at: string;
  text: string;
}
