// How far is each reading from the true one, and is that within what the teacher allows?

import type { Job } from "../../job/job";
import { predictedReading } from "./predictedReading";
import { type Reading, type Readings, checkReadings } from "./readings";
import { type Work, piecesOf, rightWork } from "./work";
import { deviationOf } from "./misfit";

/** What the teacher allows: mm on the paper and degrees (> 0); whether the girth is πd, stepped off with chords, or either. */
export interface Rule {
  readonly tolerance: number;
  readonly angle: number;
  readonly girth: "exact" | "stepped" | "either";
}

export interface JudgedReading {
  readonly reading: Reading;
  /** What should be read (mm on paper, degrees), the nearer where an edge runs along the element; null where there is nothing to read. */
  readonly expected: number | null;
  /** Reading less that; null as well. */
  readonly deviation: number | null;
  readonly within: boolean;
}

export interface Verdict {
  readonly judged: readonly JudgedReading[];
  /** Over the lengths with a deviation, mm on paper: the greatest without its sign, the mean without signs and with them; 0 where there are none. */
  readonly largest: number;
  readonly meanSize: number;
  readonly mean: number;
  /** Readings outside the tolerance. */
  readonly outside: number;
  /** How the stretch-out was found: the nearer of πd and chords where they can be told apart by the tolerance; null when it was not measured or is neither. */
  readonly girth: "exact" | "stepped" | "same" | null;
  /** mm on paper: the stretch-out as πd and as chords. */
  readonly girths: { readonly exact: number; readonly stepped: number };
}

/**
 * The verdict on readings of a job's development; what was not measured is not judged.
 * @throws RangeError for readings that no drawing can give, a job that cannot be made, a tolerance that is not positive.
 */
export function verdict(job: Job, readings: Readings, rule: Rule): Verdict {
  checkReadings(readings);
  if (!(rule.tolerance > 0)) throw new RangeError(`invalid tolerance: ${rule.tolerance}; not in (0, ∞)`);
  if (!(rule.angle > 0)) throw new RangeError(`invalid angle: ${rule.angle}; not in (0, ∞)`);
  const exact = expectations(job, readings, rightWork(readings, false));
  const stepped = expectations(job, readings, rightWork(readings, true));
  const place = { line: "stretchOut" } as const;
  const girths = { exact: exact(place)?.[0] ?? 0, stepped: stepped(place)?.[0] ?? 0 };
  const girth = girthFound(readings, girths, rule.tolerance);
  const right = rule.girth === "stepped" || (rule.girth === "either" && girth === "stepped") ? stepped : exact;
  const judged = readings.values.map((reading) => judgedReading(reading, right(reading) ?? [], reading.line === "angle" ? rule.angle : rule.tolerance));
  const lengths = judged.flatMap(({ reading, deviation }) => (reading.line === "angle" || deviation === null ? [] : [deviation]));
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
  return {
    judged, girth, girths, outside: judged.filter(({ within }) => !within).length,
    largest: Math.max(0, ...lengths.map(Math.abs)), meanSize: mean(lengths.map(Math.abs)), mean: mean(lengths),
  };
}

function expectations(job: Job, { scale }: Readings, work: Work): (place: Parameters<typeof predictedReading>[4]) => readonly number[] | null {
  const piece = piecesOf(job)(work);
  if (!piece) throw new RangeError("the piece of the job cannot be made");
  return (place) => predictedReading(work, piece, job, scale, place);
}

function judgedReading(reading: Reading, expected: readonly number[], tolerance: number): JudgedReading {
  const deviation = deviationOf(reading.value, expected);
  if (deviation === Infinity) return { reading, expected: null, deviation: null, within: false };
  return { reading, expected: reading.value - deviation, deviation, within: Math.abs(deviation) <= tolerance };
}

function girthFound({ values }: Readings, { exact, stepped }: Verdict["girths"], tolerance: number): Verdict["girth"] {
  const measured = values.find(({ line }) => line === "stretchOut")?.value;
  if (measured === undefined) return null;
  const [off, offStepped] = [Math.abs(measured - exact), Math.abs(measured - stepped)];
  if (Math.min(off, offStepped) > tolerance) return null;
  if (Math.abs(exact - stepped) <= tolerance) return "same";
  return offStepped < off ? "stepped" : "exact";
}
