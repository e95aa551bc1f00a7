// An exercise for a class: one job, and what of it may differ from student to student.

import type { FabricationChoices } from "../job/fabricationChoices";
import type { Job, Seam } from "../job/job";

/** Values of one number of the job, from `from` to `to` by `step`, in the unit of its field. */
export interface VariantRange {
  /** Path of the number in the job: "part.diameter", "part.cuts.0.angle". */
  readonly field: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

export interface Exercise {
  readonly job: Job;
  readonly ranges: readonly VariantRange[];
  /** Seams to choose among; none: that of the job. */
  readonly seams: readonly Seam[];
  /** Hands to choose among; none: that of the job. */
  readonly hands: readonly FabricationChoices["hand"][];
  /** What every variant must keep to. */
  readonly keeps: Keeps;
  /** Another seed gives other variants in another order. */
  readonly seed: number;
}

export interface Keeps {
  /** Each cut goes right through its end and leaves nothing of it square; openings touch no end and no other opening. */
  readonly inside: boolean;
  /** Least ordinate at any station, mm; 0 for none. */
  readonly ordinate: number;
  /** Room the pattern must fit into at full size, either way round, mm; null for none. */
  readonly sheet: { readonly width: number; readonly height: number } | null;
}
