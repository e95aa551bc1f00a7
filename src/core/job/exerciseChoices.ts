// What of a job may differ from student to student, and what every student's piece must keep to.
// Meanings, ranges and defaults of every field: docs/job-format.md and limits.ts.

import type { FabricationChoices } from "./fabricationChoices";
import type { Seam } from "./job";

/** Values of one number of the job, from `from` to `to` by `step`, in the unit of its field. */
export interface VariantRange {
  /** Path of the number in the job, a cut by its id: "part.diameter", "part.cuts.roof-slope.angle". */
  field: string;
  from: number;
  to: number;
  step: number;
}

export interface ExerciseChoices {
  ranges: VariantRange[];
  /** Seams to choose among; none: that of the job. */
  seams: Seam[];
  /** Hands to choose among; none: that of the job. */
  hands: FabricationChoices["hand"][];
  keeps: Keeps;
  /** Another seed gives other variants in another order. */
  seed: number;
}

/** What every variant must keep to. */
export interface Keeps {
  /** Each cut goes right through its end and leaves nothing of it square; openings touch no end and no other opening. */
  inside: boolean;
  /** Least ordinate at any station, mm; 0 for none. */
  ordinate: number;
  /** Room the pattern must fit into at full size, either way round, mm; null for none. */
  sheet: { width: number; height: number } | null;
}

/** Nothing differs from student to student. A fresh object at each call. */
export function noExercise(): ExerciseChoices {
  return { ranges: [], seams: [], hands: [], keeps: { inside: true, ordinate: 0, sheet: null }, seed: 1 };
}
