// The readings under trial, and the heights every way of drawing would take for them; heights are looked up once a piece and a numbering.

import type { Job } from "../../job/job";
import { predictedHeights, predictedSize } from "./predictedReading";
import { type Reading, type Readings, isOrdinate } from "./readings";
import { strayBound } from "./misfit";
import { type Work, piecesOf, rightWork } from "./work";

/** For reading number i: heights on the piece (mm) of an ordinate, else the size or angle itself; empty and null as in `predictedReading`. */
export type Expected = (i: number) => readonly number[] | null;

export interface Trial {
  readonly right: Work;
  readonly scale: number;
  readonly values: readonly Reading[];
  readonly ordinate: readonly boolean[];
  /** mm: what the teacher allows, and beyond which a reading is a stray one. */
  readonly tolerance: number;
  readonly bound: number;
  /** What a work leads to expect; null when its piece cannot be made. */
  readonly expected: (work: Work) => Expected | null;
  /** Diameter (mm) that is developed on the right piece. */
  readonly developed: number;
}

/** The trial of readings of a job. @throws RangeError when the piece of the job cannot be made. */
export function trialOf(job: Job, readings: Readings, tolerance: number, stepped: boolean): Trial {
  const pieceOf = piecesOf(job);
  const right = rightWork(readings, stepped);
  const piece = pieceOf(right);
  if (!piece) throw new RangeError("the piece of the job cannot be made");
  const { scale, values } = readings;
  const ordinate = values.map(isOrdinate);
  const heights = new Map<string, readonly (readonly number[] | null)[]>();
  return { right, scale, values, ordinate, tolerance, bound: strayBound(tolerance), expected, developed: piece.developed };

  function expected(work: Work): Expected | null {
    const drawn = pieceOf(work);
    if (!drawn) return null;
    const { changes, start, towards, divisions, slip, between } = work;
    const key = `${changes.map((change) => change.key).join()} ${start} ${towards} ${divisions} ${slip ? `${slip.at} ${slip.by}` : ""} ${between}`;
    const known = heights.get(key) ?? values.map((place) => (isOrdinate(place) ? predictedHeights(work, drawn, place) : null));
    heights.set(key, known);
    return (i) => {
      const place = values[i];
      return !place || isOrdinate(place) ? (known[i] ?? null) : predictedSize(work, drawn, job, scale, place);
    };
  }
}
