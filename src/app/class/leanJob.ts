import { parseJob, writeJobText, type Job } from "../../core/index";

/** The job as plain data with everything left out that checking fills in again. */
export function leanJob(job: Job): Record<string, unknown> {
  const lean = JSON.parse(JSON.stringify(job)) as Record<string, unknown>;
  const whole = writeJobText(job);
  const says = () => {
    const parsed = parseJob(lean);
    return parsed.ok && writeJobText(parsed.job) === whole;
  };
  thin(lean, says);
  return lean;
}

/** Takes out of plain data, branch by branch, what can be missed; the rest keeps its order. */
function thin(data: Record<string, unknown>, says: () => boolean): void {
  for (const key of Object.keys(data)) {
    const value = data[key];
    delete data[key];
    if (says()) continue;
    data[key] = value;
    for (const branch of Array.isArray(value) ? value : [value]) if (typeof branch === "object" && branch !== null) thin(branch as Record<string, unknown>, says);
  }
}
