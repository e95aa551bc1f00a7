// A mistake that may have been made: how it changes the work, and how readily it is believed.

import type { Job } from "../../job/job";
import type { Mistake } from "./mistake";
import type { Readings } from "./readings";
import type { Work } from "./work";

export interface Suspicion {
  /** What it decides; two that decide the same cannot both be made. */
  readonly decides: readonly string[];
  /** Cost of believing it, as a sum of squares in units of the reading noise: -2 ln of its probability beforehand. */
  readonly penalty: number;
  readonly change: (work: Work) => Work;
  /**
   * A quantity found from the readings themselves: one offset of all ordinates, one factor of all lengths, or how far (0 to 1) the
   * piece lies between the one `change` gives and the one `changeTo` gives.
   */
  readonly free: "offset" | "factor" | "blend" | null;
  readonly changeTo?: (work: Work) => Work;
  /** The mistake, with the quantity found; without one it is not used. */
  readonly mistake: (found: number) => Mistake;
}

/** What suspicions are made from. */
export interface SuspicionFrame {
  readonly job: Job;
  readonly readings: Readings;
  /** Whether the teacher's rule is to step the girth off with chords. */
  readonly stepped: boolean;
  /** Diameter (mm) that is developed. */
  readonly developed: number;
}

/** One of about seventy kinds; chords are the commonest of all; a quantity to be found, or one of a row, costs more. */
export const PENALTY = { usual: 9, common: 6, found: 12 } as const;

/** A suspicion with nothing to be found. */
export function suspicion(decides: readonly string[], mistake: Mistake, change: Suspicion["change"], penalty: number = PENALTY.usual): Suspicion {
  return { decides, penalty, change, free: null, mistake: () => mistake };
}
