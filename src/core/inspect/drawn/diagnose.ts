// Which known mistake would have given these readings? Every mistake predicts what would be read; singly first, then in pairs, each
// is held against what was read, and the one that leaves least unexplained for what it assumes is named, if no other does as well.

import type { Job } from "../../job/job";
import { drawnAt, cutSuspicions, isRightAngle } from "./cutSuspicions";
import { girthSuspicions } from "./girthSuspicions";
import { type Hypothesis, hypothesis, isAcceptable, mostStrays, namesOf, straysOf } from "./hypothesis";
import { deviationOf, unsureCost } from "./misfit";
import type { Mistake } from "./mistake";
import { numberingSuspicions } from "./numberingSuspicions";
import { ordinateSuspicions } from "./ordinateSuspicions";
import { onPaper } from "./predictedReading";
import { type Reading, type Readings, checkReadings } from "./readings";
import type { Suspicion, SuspicionFrame } from "./suspicion";
import { type Trial, trialOf } from "./trial";

/** What was probably done. */
export interface Explanation {
  /** None when only single readings stray. */
  readonly mistakes: readonly Mistake[];
  /** Readings that even with the mistakes made do not fit. */
  readonly strays: readonly Reading[];
  /** For each reading what is left (mm on paper, degrees) once the mistakes are allowed for; null where they say nothing about it. */
  readonly left: readonly (number | null)[];
  /** Root of the mean square of what is left, strays set aside; and of the deviations from the true readings, all of them. */
  readonly rms: number;
  readonly rmsBefore: number;
}

export type Diagnosis = {
  /** Mistakes that would not have shown in these readings: they can be neither found nor ruled out. */
  readonly unseen: readonly Mistake[];
} & (
  | { readonly kind: "right" }
  | { readonly kind: "too-few" }
  | { readonly kind: "explained"; readonly explanation: Explanation }
  | { readonly kind: "alike"; readonly explanations: readonly Explanation[] }
  | { readonly kind: "unexplained" }
);

/** With fewer readings nothing is named. */
const FEWEST = 4;
/** Two accounts whose scores differ by less fit alike: a ratio of likelihoods of 20. */
const ALIKE = 6;
/** A single mistake whose misfit exceeds the number of readings by less cannot be bettered by a pair. */
const GOOD = 6;
/** Accounts within this of the best at the usual noise are looked at more closely. */
const SLACK = 20;
/** Parts of a degree to which a free angle is found, and how many of them are tried on either side. */
const ANGLE_PARTS = 5;
const NEAR = 5;

/**
 * The diagnosis of readings of a job's development. `stepped`: whether the girth was to be stepped off with chords.
 * "right": all within the tolerance. "alike": several accounts fit alike. "unexplained": none fits.
 * @throws RangeError for readings that no drawing can give, a job that cannot be made, a tolerance that is not positive.
 */
export function diagnose(job: Job, readings: Readings, { tolerance, stepped }: { tolerance: number; stepped: boolean }): Diagnosis {
  checkReadings(readings);
  if (!(tolerance > 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in (0, ∞)`);
  const trial = trialOf(job, readings, tolerance, stepped);
  const suspicions = allSuspicions({ job, readings, stepped, developed: trial.developed });
  const seen = suspicions.filter((one) => one.free !== null || isSeen(trial, one));
  const unseen = suspicions.flatMap((one) => (seen.includes(one) ? [] : [one.mistake(0)]));
  const done = hypothesis(trial, [], Infinity);
  if (!done || done.deviations.every((deviation) => Math.abs(deviation ?? 0) <= tolerance)) return { kind: "right", unseen };
  if (readings.values.length < FEWEST) return { kind: "too-few", unseen };
  return { ...chosen(trial, done, accounts(job, trial, done, seen)), unseen };
}

function allSuspicions(frame: SuspicionFrame): Suspicion[] {
  return [...girthSuspicions(frame), ...numberingSuspicions(frame), ...ordinateSuspicions(frame), ...cutSuspicions(frame)];
}

/** Whether a mistake changes any reading by more than the tolerance. */
function isSeen(trial: Trial, { change }: Suspicion): boolean {
  const work = change(trial.right);
  const [rightly, wrongly] = [trial.expected(trial.right), trial.expected(work)];
  if (!rightly || !wrongly) return false;
  const [from, to] = [onPaper(trial.right, trial.scale), onPaper(work, trial.scale)];
  return trial.values.some((_, i) => {
    const [expected, other] = [rightly(i), wrongly(i)];
    if (!expected || !other) return false;
    if (expected.length === 0 || other.length === 0) return expected.length !== other.length;
    if (!trial.ordinate[i]) return Math.abs((expected[0] ?? 0) - (other[0] ?? 0)) > trial.tolerance;
    return expected.some((height) => Math.abs(deviationOf(from.times * height + from.plus, other, to.times, to.plus)) > trial.tolerance);
  });
}

/** All accounts that may be the best or as good as it, the best first. */
function accounts(job: Job, trial: Trial, done: Hypothesis, suspicions: readonly Suspicion[]): Account[] {
  const found: Hypothesis[] = [];
  let best = done.total;
  const add = (mistakes: readonly Suspicion[]) => {
    const one = hypothesis(trial, mistakes, best + SLACK);
    if (!one) return;
    found.push(one);
    best = Math.min(best, one.total);
  };
  for (const one of suspicions) add([one]);
  const least = Math.min(done.cost, ...found.map(({ cost }) => cost));
  if (least > trial.values.length + GOOD) for (const pair of pairsOf(trial, suspicions)) add(pair);
  const near = found.filter(({ total }) => total <= best + SLACK);
  const better = near.map((one) => refined(trial, one)).filter(({ suspicions, found }) => !suspicions.some(({ mistake }, k) => isNone(job, mistake(found[k] ?? 0))));
  return [done, ...better].map((one) => accountOf(trial, one)).sort((a, b) => a.score - b.score);
}

/** Whether what was found is as it should be. */
function isNone(job: Job, mistake: Mistake): boolean {
  return mistake.kind === "angle" && isRightAngle(job, mistake);
}

/** A hypothesis with its score: penalties and misfit, the noise of the hand allowed for. */
interface Account extends Hypothesis {
  readonly score: number;
}

function accountOf(trial: Trial, one: Hypothesis): Account {
  return { ...one, score: one.total - one.cost + unsureCost(one.deviations, trial.bound, mostStrays(trial)) };
}

/** Pairs that decide different things; any angle is not looked for on a piece that is changed otherwise too. */
function* pairsOf({ right }: Trial, suspicions: readonly Suspicion[]): Generator<[Suspicion, Suspicion]> {
  const changing = new Set(suspicions.filter(({ change }) => change(right).changes.length > 0));
  for (const [i, one] of suspicions.entries()) {
    for (const other of suspicions.slice(0, i)) {
      if (one.free !== null && other.free !== null && !one.changeTo && !other.changeTo) continue;
      if ((one.changeTo && changing.has(other)) || (other.changeTo && changing.has(one))) continue;
      if (!one.decides.some((what) => other.decides.includes(what))) yield [other, one];
    }
  }
}

/** An angle found between two pieces, bettered with the very piece. */
function refined(trial: Trial, one: Hypothesis): Hypothesis {
  const k = one.suspicions.findIndex(({ changeTo }) => changeTo);
  const blend = one.suspicions[k];
  const mistake = blend?.mistake(one.found[k] ?? 0);
  if (!blend || mistake?.kind !== "angle") return one;
  const tried = Array.from({ length: 2 * NEAR + 1 }, (_, part) => {
    const near = drawnAt({ id: mistake.cut }, Math.max(0, mistake.angle + (part - NEAR) / ANGLE_PARTS), blend.penalty);
    return hypothesis(trial, one.suspicions.map((other) => (other === blend ? near : other)), Infinity) ?? one;
  });
  return tried.reduce((best, next) => (next.total < best.total ? next : best));
}

type Choice =
  | { readonly kind: "explained"; readonly explanation: Explanation }
  | { readonly kind: "alike"; readonly explanations: readonly Explanation[] }
  | { readonly kind: "unexplained" };

/** The best account, if it is good enough and stands alone; one that only adds to it, or leaves out of it, is no rival. */
function chosen(trial: Trial, done: Hypothesis, sorted: readonly Account[]): Choice {
  const [best] = sorted;
  if (!best || !isAcceptable(trial, best)) return { kind: "unexplained" };
  const names = namesOf(trial, best);
  const rivals: Account[] = [];
  const told = [names];
  for (const one of sorted) {
    const own = namesOf(trial, one);
    if (one.score > best.score + ALIKE || !isAcceptable(trial, one) || told.some((others) => isPartOf(own, others) || isPartOf(others, own))) continue;
    told.push(own);
    rivals.push(one);
  }
  const explain = (one: Hypothesis) => explanationOf(trial, done, one);
  return rivals.length === 0 ? { kind: "explained", explanation: explain(best) } : { kind: "alike", explanations: [best, ...rivals].map(explain) };
}

function isPartOf(part: readonly string[], whole: readonly string[]): boolean {
  return part.every((name) => whole.includes(name));
}

function explanationOf(trial: Trial, done: Hypothesis, one: Hypothesis): Explanation {
  const strays = straysOf(trial, one);
  return {
    mistakes: one.suspicions.map(({ mistake }, k) => mistake(one.found[k] ?? 0)), strays, left: one.deviations,
    rms: rootMeanSquare(one.deviations.filter((deviation) => Math.abs(deviation ?? Infinity) <= trial.bound)),
    rmsBefore: rootMeanSquare(done.deviations.filter((deviation) => Math.abs(deviation ?? Infinity) < Infinity)),
  };
}

function rootMeanSquare(values: readonly (number | null)[]): number {
  return Math.sqrt(values.reduce<number>((sum, value) => sum + (value ?? 0) ** 2, 0) / Math.max(1, values.length));
}
