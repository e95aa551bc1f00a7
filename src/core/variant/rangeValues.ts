// The values of a range, and the number of a job a range stands for.

import type { Job } from "../job/job";
import type { VariantRange } from "./exercise";

/** Most values of one range. */
export const MOST_VALUES = 10_000;

/** Part of a step by which the last value may miss the end of its range. */
const REACHED = 1e-9;

/** What is wrong with a range; null when it can be used with this job. */
export type RangeFault = "no-such-number" | "not-a-number" | "no-step" | "upside-down" | "too-many-values";

export function rangeFault(job: Job, { field, from, to, step }: VariantRange): RangeFault | null {
  if (!Number.isFinite(numberAt(job, field))) return "no-such-number";
  if (![from, to, step].every(Number.isFinite)) return "not-a-number";
  if (!(step > 0)) return "no-step";
  if (to < from) return "upside-down";
  return (to - from) / step >= MOST_VALUES ? "too-many-values" : null;
}

/** The values from `from` up, rounded to a billionth so that steps of 0.1 stay steps of 0.1. */
export function rangeValues({ from, to, step }: VariantRange): number[] {
  return Array.from({ length: Math.floor((to - from) / step + REACHED) + 1 }, (_, k) => Math.round((from + k * step) * 1e9) / 1e9);
}

/** The number at a path of the part or the development of a job; NaN when there is none. */
export function numberAt(job: Job, field: string): number {
  if (!/^(part|development)\./.test(field)) return NaN;
  let at: unknown = job;
  for (const key of field.split(".")) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, key)) return NaN;
    at = (at as Record<string, unknown>)[key];
  }
  return typeof at === "number" ? at : NaN;
}

/** Puts a number in its place; the job, which is changed, must have one there. */
export function putNumber(job: Job, field: string, value: number): void {
  const keys = field.split(".");
  const last = keys.pop() ?? "";
  let at = job as unknown as Record<string, unknown>;
  for (const key of keys) at = at[key] as Record<string, unknown>;
  at[last] = value;
}
