import type { Cut, Job } from "./pipeJob";

/** Names of the fields that hold angles, counts or words: they do not grow. */
const KEPT = new Set(["angle", "direction", "turn", "extra", "stations", "version", "seam"]);

/** The job with every length multiplied by `factor`. */
export function scaledJob(job: Job, factor: number): Job {
  return { ...job, part: { ...scaledValue(job.part, factor), cuts: job.part.cuts.map((cut): Cut => scaledValue(cut, factor)) } };
}

function scaledValue<Value>(value: Value, factor: number): Value {
  if (typeof value === "number") return (value * factor) as Value;
  if (Array.isArray(value)) return value.map((item: unknown) => scaledValue(item, factor)) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, KEPT.has(name) ? item : scaledValue(item, factor)])) as Value;
}
