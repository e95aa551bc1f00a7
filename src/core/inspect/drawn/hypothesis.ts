// One account of the readings: the work done rightly but for none, one or two mistakes, held against what was read.

import { type FreeRow, READING_NOISE, costOf, deviationOf, foundQuantity } from "./misfit";
import { identityOf } from "./mistake";
import { onPaper } from "./predictedReading";
import type { Reading } from "./readings";
import type { Suspicion } from "./suspicion";
import type { Expected, Trial } from "./trial";
import type { Work } from "./work";

export interface Hypothesis {
  readonly suspicions: readonly Suspicion[];
  /** For each suspicion its free quantity, 0 where it has none. */
  readonly found: readonly number[];
  /** Misfit of the readings at the usual noise, and with the penalties: the less, the better the account. */
  readonly cost: number;
  readonly total: number;
  /** Reading less what was expected (mm, degrees); null where nothing was, Infinity where nothing could be read. */
  readonly deviations: readonly (number | null)[];
}

/** Places between two pieces that are tried where a second quantity is free. */
const PARTS = 20;

/** The hypothesis that just these mistakes were made; null when their piece cannot be made, or the total exceeds `limit`. */
export function hypothesis(trial: Trial, suspicions: readonly Suspicion[], limit: number): Hypothesis | null {
  const penalty = suspicions.reduce((sum, one) => sum + one.penalty, 0);
  if (penalty > limit) return null;
  const work = suspicions.reduce((done, { change }) => change(done), trial.right);
  const expected = trial.expected(work);
  const free = suspicions.filter((one) => one.free !== null);
  if (!expected) return null;
  if (free.length === 0) return judged(trial, suspicions, [], deviationUnder(trial, work, expected), limit - penalty);
  const other = blended(trial, suspicions);
  if (free.some((one) => one.changeTo) && !other) return null;
  return withFree(trial, suspicions, { work, expected, other, penalty }, limit);
}

interface Frame {
  readonly work: Work;
  readonly expected: Expected;
  /** What is expected at the other end of a blend; null where there is none. */
  readonly other: Expected | null;
  readonly penalty: number;
}

/** What is expected of the piece at the far end of a blend. */
function blended(trial: Trial, suspicions: readonly Suspicion[]): Expected | null {
  if (!suspicions.some((one) => one.changeTo)) return null;
  return trial.expected(suspicions.reduce((done, { change, changeTo }) => (changeTo ?? change)(done), trial.right));
}

function withFree(trial: Trial, suspicions: readonly Suspicion[], { work, expected, other, penalty }: Frame, limit: number): Hypothesis | null {
  const plain = suspicions.find(({ free }) => free === "offset" || free === "factor")?.free ?? null;
  const shares = !other ? [0] : plain ? Array.from({ length: PARTS + 1 }, (_, k) => k / PARTS) : [null];
  return shares.reduce<Hypothesis | null>((best, share) => {
    const rows = rowsOf(trial, work, share === null ? expected : mixed(expected, other, share), share === null ? "blend" : plain, other);
    const free = share === null ? "blend" : plain;
    const [low, high] = free === "blend" ? [0, 1] : [-Infinity, Infinity];
    const quantity = foundQuantity(rows.filter((row) => row !== null), trial.bound, low, high);
    if (free === "offset" && Math.abs(quantity) < trial.tolerance) return best;
    if (free === "factor" && Math.abs(quantity - 1) * longest(trial) < trial.tolerance) return best;
    const found = suspicions.map((one) => (one.free === null ? 0 : one.free === "blend" ? (share ?? quantity) : quantity));
    return judged(trial, suspicions, found, (i) => deviationAt(rows[i] ?? null, quantity), Math.min(limit, best?.total ?? Infinity) - penalty) ?? best;
  }, null);
}

type Row = FreeRow | null;

/** What each reading is expected to be, linear in the free quantity. */
function rowsOf(trial: Trial, work: Work, expected: Expected, free: Suspicion["free"], other: Expected | null = null): Row[] {
  const { times, plus } = onPaper(work, trial.scale);
  return trial.values.map(({ value, line }, i) => {
    const one = expected(i);
    if (!one) return null;
    const ordinate = trial.ordinate[i] === true;
    const base = ordinate ? one.map((height) => times * height + plus) : one;
    if (free === "offset") return { value, base, slope: base.map(() => (ordinate ? 1 : 0)) };
    if (free === "factor" && line !== "angle") return { value, base: base.map(() => 0), slope: base };
    const far = free === "blend" ? other?.(i) : null;
    if (far?.length !== base.length) return { value, base, slope: base.map(() => 0) };
    return { value, base, slope: far.map((end, k) => (ordinate ? times * end + plus : end) - (base[k] ?? 0)) };
  });
}

function deviationAt(row: Row, found: number): number | null {
  return row && deviationOf(row.value, row.base.map((one, k) => one + found * (row.slope[k] ?? 0)));
}

/** Deviations where nothing is free. */
function deviationUnder({ values, ordinate, scale }: Trial, work: Work, expected: Expected): (i: number) => number | null {
  const { times, plus } = onPaper(work, scale);
  return (i) => {
    const one = expected(i);
    const value = values[i]?.value ?? 0;
    return one && (ordinate[i] === true ? deviationOf(value, one, times, plus) : deviationOf(value, one));
  };
}

function mixed(from: Expected, to: Expected | null, share: number): Expected {
  return (i) => {
    const [one, end] = [from(i), to?.(i)];
    return one && end?.length === one.length ? one.map((height, k) => height + share * ((end[k] ?? height) - height)) : one;
  };
}

/** The deviations judged; null as soon as the misfit exceeds `limit`. */
function judged({ values, bound }: Trial, suspicions: readonly Suspicion[], found: readonly number[], off: (i: number) => number | null, limit: number): Hypothesis | null {
  let cost = 0;
  const deviations: (number | null)[] = [];
  for (let i = 0; i < values.length; i++) {
    const deviation = off(i);
    cost += costOf(deviation, bound);
    if (cost > limit) return null;
    deviations.push(deviation);
  }
  const total = suspicions.reduce((sum, { penalty }) => sum + penalty, cost);
  return { suspicions, found: suspicions.map((_, k) => found[k] ?? 0), cost, total, deviations };
}

function longest({ values }: Trial): number {
  return Math.max(0, ...values.flatMap(({ line, value }) => (line === "angle" ? [] : [Math.abs(value)])));
}

/** The readings a hypothesis leaves out as stray: those beyond the bound, without any mistake those beyond the tolerance. */
export function straysOf({ values, bound, tolerance }: Trial, { deviations, suspicions }: Hypothesis): Reading[] {
  const most = suspicions.length > 0 ? bound : tolerance;
  return values.filter((_, i) => Math.abs(deviations[i] ?? 0) > most);
}

/** What a hypothesis names: the identities of its mistakes; "stray" when it has none but leaves readings out. */
export function namesOf(trial: Trial, one: Hypothesis): string[] {
  const names = one.suspicions.map(({ mistake }, k) => identityOf(mistake(one.found[k] ?? 0)));
  return names.length === 0 && straysOf(trial, one).length > 0 ? ["stray"] : names.sort();
}

/** Readings of so many that may be stray: one in five, and one in any case. */
export function mostStrays({ values }: Trial): number {
  return Math.max(1, Math.floor(values.length / 5));
}

/** Readings that must bear an account out, beyond two for each of its mistakes: with fewer, two mistakes and a stray explain anything. */
const BEYOND = 2;

/** Few enough strays, and the others close and enough to bear it out. */
export function isAcceptable(trial: Trial, one: Hypothesis): boolean {
  const kept = one.deviations.filter((deviation) => deviation !== null && Math.abs(deviation) <= trial.bound);
  const square = kept.reduce<number>((sum, deviation) => sum + (deviation ?? 0) ** 2, 0) / Math.max(1, kept.length);
  if (one.suspicions.length > 0 && kept.length < 2 * one.suspicions.length + BEYOND) return false;
  return straysOf(trial, one).length <= mostStrays(trial) && square <= (2 * READING_NOISE) ** 2;
}
