// From a checked job to its development: build, trim, unroll.

import { CHORD_TOLERANCE } from "./numeric/tolerance";
import type { Job } from "./job/job";
import type { Problem } from "./job/problem";
import { type Piece, pipePiece } from "./part/pipePiece";

export interface Development {
  readonly job: Job;
  readonly pieces: readonly Piece[];
  readonly notices: readonly Problem[];
}

export type Outcome =
  | { readonly ok: true; readonly development: Development }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The development of a job as `parseJob` gives it, or why the part cannot be made.
 * Edges are drawn within `chordTolerance` (mm, 1e-6 to 10, 0.005 unless given) of the true ones; ordinates are exact.
 * @throws RangeError for a tolerance outside its range.
 */
export function developJob(job: Job, { chordTolerance = CHORD_TOLERANCE }: { chordTolerance?: number } = {}): Outcome {
  if (!(chordTolerance >= 1e-6 && chordTolerance <= 10)) {
    throw new RangeError(`invalid chordTolerance: ${chordTolerance}; not in [1e-6, 10]`);
  }
  const made = pipePiece(job, chordTolerance);
  if (!made.ok) return made;
  return { ok: true, development: { job, pieces: [made.piece], notices: made.notices } };
}
