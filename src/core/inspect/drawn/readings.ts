// What was measured on a hand-drawn development. Lengths in mm on the paper, as the rule shows them; angles in degrees.

/** The lines of the pattern whose ordinates are read: both ends, and the two edges of the first opening met on the element. */
export type ReadLine = "top" | "bottom" | "lower" | "upper";

/** An ordinate at a place of the student's own numbering: whole numbers are stations, others lie between (3.25: a quarter of a space past 3). */
export interface OrdinatePlace {
  readonly line: ReadLine;
  readonly at: number;
}

/** `angle`: of a cut, as drawn in the view that shows it edge on; `cut` is its id. */
export type ReadingPlace = OrdinatePlace | { readonly line: "stretchOut" } | { readonly line: "spacing" } | { readonly line: "angle"; readonly cut: string };

/** One thing measured; what was not measured has none. */
export type Reading = ReadingPlace & { readonly value: number };

export interface Readings {
  /** mm on the paper for one mm of the piece: 0.5 for a drawing at 1:2. */
  readonly scale: number;
  /** Equal spaces the stretch-out should have, 4 to 360. */
  readonly count: number;
  /** Direction (radians) of the student's station 0, and the way the numbers run: 1 with growing θ. */
  readonly start: number;
  readonly towards: 1 | -1;
  readonly values: readonly Reading[];
}

/** Whether a reading is an ordinate. */
export function isOrdinate(place: ReadingPlace): place is OrdinatePlace {
  return "at" in place;
}

/**
 * @throws RangeError for readings that no drawing can give: a scale that is not positive, fewer than 4 spaces or more than 360, a
 * value that is not a finite number.
 */
export function checkReadings({ scale, count, start, values }: Readings): void {
  if (!(scale > 0 && scale < Infinity)) throw new RangeError(`invalid scale: ${scale}; not in (0, ∞)`);
  if (!(Number.isInteger(count) && count >= 4 && count <= 360)) throw new RangeError(`invalid count: ${count}; not a whole number in [4, 360]`);
  if (!Number.isFinite(start)) throw new RangeError(`invalid start: ${start}; not finite`);
  const odd = values.find((reading) => !Number.isFinite(reading.value) || (isOrdinate(reading) && !Number.isFinite(reading.at)));
  if (odd) throw new RangeError(`invalid reading: ${JSON.stringify(odd)}; not finite`);
}
