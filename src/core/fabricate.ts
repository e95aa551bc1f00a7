// From a development to what the shop needs: cut lines with their allowances, marks, end plates, measures, the part list.

import { CHORD_TOLERANCE } from "./numeric/tolerance";
import type { Development } from "./developJob";
import type { Problem } from "./job/problem";
import { type EndPlate, endPlates } from "./fabricate/endPlate";
import { type FabricatedPiece, fabricatedPiece } from "./fabricate/fabricatedPiece";
import { type PartRow, partList } from "./fabricate/partList";

export interface Fabrication {
  readonly pieces: readonly FabricatedPiece[];
  readonly plates: readonly EndPlate[];
  readonly parts: readonly PartRow[];
  /** What was asked for and cannot be made; it is left off, so nothing should be cut while there are any. */
  readonly problems: readonly Problem[];
}

/**
 * All pieces of a development made ready for the shop by the job's section `fabrication`. Parallel edges are within
 * `chordTolerance` (mm, 1e-6 to 10, 0.005 unless given) of their true place.
 * @throws RangeError for a tolerance outside its range.
 */
export function fabricate({ job, pieces }: Development, { chordTolerance = CHORD_TOLERANCE }: { chordTolerance?: number } = {}): Fabrication {
  if (!(chordTolerance >= 1e-6 && chordTolerance <= 10)) throw new RangeError(`invalid chordTolerance: ${chordTolerance}; not in [1e-6, 10]`);
  const made = pieces.map((piece) => fabricatedPiece(piece, job, chordTolerance));
  const closed = pieces.flatMap((piece) => (["top", "bottom"] as const).map((end) => endPlates(piece, job, end, chordTolerance)));
  const finished = made.map((one) => one.made);
  const plates = closed.flatMap((one) => one.plates);
  return { pieces: finished, plates, parts: partList(finished, plates), problems: [...made, ...closed].flatMap(({ problems }) => problems) };
}
