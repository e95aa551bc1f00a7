// Own dimensions for every student: jobs chosen from the ranges of an exercise, each with a code from which it always comes back.

import type { Job } from "../job/job";
import { parseJob } from "../job/parseJob";
import { type Piece, pipePiece } from "../part/pipePiece";
import { type Constraint, broken } from "./broken";
import { combination, combinationCount } from "./combination";
import type { Exercise } from "./exercise";
import { type RangeFault, rangeFault } from "./rangeValues";
import { scattered } from "./scattered";
import { type ReadCode, readCode, writeCode } from "./variantCode";

export interface Variant {
  readonly code: string;
  readonly job: Job;
}

export type VariantFault =
  /** A range that cannot be used. */
  | { readonly kind: "range"; readonly field: string; readonly fault: RangeFault }
  /** Two ranges for one number. */
  | { readonly kind: "twice"; readonly field: string }
  /** Fewer than asked for: how many of those tried failed what, the rest having the answers of another. */
  | { readonly kind: "too-few"; readonly found: number; readonly tried: number; readonly failed: Readonly<Record<Constraint | "alike", number>> };

export type Variants = { readonly ok: true; readonly variants: readonly Variant[] } | { readonly ok: false; readonly fault: VariantFault };

/** How many ways to choose are looked at for so many variants before it is said that the ranges do not give enough. */
export function mostTried(count: number): number {
  return Math.max(200, 40 * count);
}

/** mm between the pattern's curves and the true edge: only ends, girth and height are looked at, and those are exact at any. */
const COARSE = 1;

/** Ordinates and places that differ by less than this, mm, are one answer: nobody draws finer. */
const ALIKE = 0.01;

/** How far a search through the ways to choose has come. */
export interface Search {
  /** Ways to choose in all, and those looked at. */
  readonly all: bigint;
  readonly tried: number;
  readonly found: readonly Variant[];
  readonly failed: Readonly<Record<Constraint | "alike", number>>;
}

/**
 * `count` (1 to 5000) variants of an exercise, no two with the same answers. The same exercise gives the same variants in the same order.
 * @throws RangeError for another count.
 */
export function variants(exercise: Exercise, count: number): Variants {
  if (!(Number.isInteger(count) && count >= 1 && count <= 5000)) throw new RangeError(`invalid count: ${count}; not a whole number in [1, 5000]`);
  const fault = exerciseFault(exercise);
  if (fault) return { ok: false, fault };
  const most = mostTried(count);
  for (const { all, tried, found, failed } of variantSearch(exercise)) {
    if (found.length >= count) return { ok: true, variants: found };
    if (tried >= most || BigInt(tried) >= all) return { ok: false, fault: { kind: "too-few", found: found.length, tried, failed } };
  }
  throw new RangeError("a search that ends before all is tried");
}

/**
 * The search behind them, told after each way looked at; it ends when none is left. Variants come in the order in which students get them.
 * The exercise must have no fault.
 */
export function* variantSearch(exercise: Exercise): Generator<Search, void> {
  const all = combinationCount(exercise);
  const failed = { makeable: 0, inside: 0, ordinate: 0, sheet: 0, alike: 0 };
  const found: Variant[] = [];
  const answers = new Set<string>();
  for (let place = 0n; place < all; place++) {
    const tried = variantAt(exercise, place, all);
    const answer = tried.ok ? answersOf(tried.job, tried.piece) : "";
    if (!tried.ok) failed[tried.fails]++;
    else if (answers.has(answer)) failed.alike++;
    else {
      answers.add(answer);
      found.push({ code: writeCode(exercise, place), job: tried.job });
    }
    yield { all, tried: Number(place) + 1, found, failed };
  }
}

/** The variant of a code, however it was typed; why not, when the code cannot be read, belongs to another exercise or to no variant of this one. */
export function variantOfCode(exercise: Exercise, code: string):
  ({ readonly ok: true } & Variant) | { readonly ok: false; readonly reason: Extract<ReadCode, { ok: false }>["reason"] | "no-such-variant" } {
  const read = readCode(exercise, code);
  if (!read.ok) return read;
  if (exerciseFault(exercise)) return { ok: false, reason: "no-such-variant" };
  const all = combinationCount(exercise);
  const found = read.place < all ? variantAt(exercise, read.place, all) : null;
  return found?.ok ? { ok: true, code: writeCode(exercise, read.place), job: found.job } : { ok: false, reason: "no-such-variant" };
}

/** What is wrong with the ranges themselves; null when they can be searched. */
export function exerciseFault({ job, ranges }: Exercise): Exclude<VariantFault, { kind: "too-few" }> | null {
  for (const [i, range] of ranges.entries()) {
    const fault = rangeFault(job, range);
    if (fault) return { kind: "range", field: range.field, fault };
    if (ranges.slice(0, i).some(({ field }) => field === range.field)) return { kind: "twice", field: range.field };
  }
  return null;
}

type Tried = { readonly ok: true; readonly job: Job; readonly piece: Piece } | { readonly ok: false; readonly fails: Constraint };

function variantAt(exercise: Exercise, place: bigint, all: bigint): Tried {
  const parsed = parseJob(combination(exercise, scattered(place, all, exercise.seed)));
  const made = parsed.ok ? pipePiece(parsed.job, COARSE) : null;
  if (!parsed.ok || !made?.ok) return { ok: false, fails: "makeable" };
  const fails = broken(parsed.job, made.piece, exercise.keeps);
  return fails ? { ok: false, fails } : { ok: true, job: parsed.job, piece: made.piece };
}

/** What a student would have to find, as text; a piece of the other hand is another piece. */
function answersOf({ fabrication: { hand } }: Job, { stations, pattern }: Piece): string {
  const rounded = (value: number | null) => (value === null ? null : Math.round(value / ALIKE));
  const openings = stations.map((station) => station.openings.map(({ from, to }) => [rounded(from), rounded(to)]));
  return JSON.stringify([hand, rounded(pattern.girth), stations.map(({ girth, bottom, top }) => [rounded(girth), rounded(bottom), rounded(top)]), openings]);
}
