// The values of a range, and the number of a job a range stands for.

import type { VariantRange } from "../job/exerciseChoices";
import type { Job } from "../job/job";

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
  const value = placeOf(job, field)?.value;
  return typeof value === "number" ? value : NaN;
}

/** Puts a number in its place; the job, which is changed, must have one there. */
export function putNumber(job: Job, field: string, value: number): void {
  placeOf(job, field)?.put(value);
}

/** A place in plain data by its path, a cut by its id; null when there is none. */
function placeOf(job: Job, field: string): { readonly value: unknown; readonly put: (value: number) => void } | null {
  const cut = /^part\.cuts\.([^.]+)\.(.+)$/.exec(field);
  const from: unknown = cut ? job.part.cuts.find(({ id }) => id === cut[1]) : /^(part|development)\./.test(field) ? job : undefined;
  const keys = (cut?.[2] ?? field).split(".");
  const last = keys.pop() ?? "";
  const holder = keys.reduce<unknown>((at, key) => (isHolder(at) && Object.hasOwn(at, key) ? at[key] : undefined), from);
  return isHolder(holder) && Object.hasOwn(holder, last) ? { value: holder[last], put: (value) => void (holder[last] = value) } : null;
}

function isHolder(data: unknown): data is Record<string, unknown> {
  return typeof data === "object" && data !== null;
}
