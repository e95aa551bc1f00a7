import { defaultJob, develop, type Cut, type Development, type Job } from "../../src/core/index";

/** A pipe of 90 outside and 220 high with these cuts and 16 stations. */
export function pipeWith(cuts: Cut[], change: Partial<Job["part"]> = {}): Job {
  const job = defaultJob();
  return { ...job, title: "Vent", part: { ...job.part, diameter: 90, length: 220, cuts, ...change }, development: { ...job.development, stations: 16 } };
}

export const slant: Cut = { id: "slope", on: true, kind: "plane", end: "top", angle: 35, direction: 180, at: "high", height: 220 };
export const hole: Cut = { id: "branch", on: true, kind: "opening", outline: { shape: "round", diameter: 40 }, direction: 270, height: 70, offset: 0, through: "near" };

/** The development of a job that can be made. */
export function developed(job: Job): Development {
  const outcome = develop(job);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.development;
}
