import { develop, type Development, type Piece } from "../../src/core/index";
import type { Job } from "./pipeJob";

/** The development of a job that must come out; throws with the problems otherwise. */
export function developed(job: Job, options?: { chordTolerance?: number }): Development {
  const outcome = develop(job, options);
  if (!outcome.ok) throw new Error(`refused: ${JSON.stringify(outcome.problems)}`);
  return outcome.development;
}

/** The one piece of a pipe that must come out. */
export function developedPipe(job: Job, options?: { chordTolerance?: number }): Piece {
  const { pieces } = developed(job, options);
  if (pieces.length !== 1) throw new Error(`${pieces.length} pieces, expected 1`);
  return pieces[0]!;
}
