import type { Cut, Job } from "../../core/index";
import { legAdded, legRemoved } from "./changeLegs";
import { withCut } from "./cutField";

// The verbs of the clauses: each gives a new job.

export function cutRemoved(job: Job, id: string): Job {
  return withCuts(job, job.part.cuts.filter((cut) => cut.id !== id));
}

export function cutSwitched(job: Job, id: string): Job {
  return withCut(job, id, (cut) => ({ ...cut, on: !cut.on }));
}

/** The job with the cut one place further up (-1) or down (1); unchanged at the ends. */
export function cutMoved(job: Job, id: string, by: -1 | 1): Job {
  const cuts = [...job.part.cuts];
  const from = cuts.findIndex((cut) => cut.id === id);
  const cut = cuts[from];
  const other = cuts[from + by];
  if (!cut || !other) return job;
  cuts[from] = other;
  cuts[from + by] = cut;
  return withCuts(job, cuts);
}

/** The job with a copy of the cut right after it. */
export function cutCopied(job: Job, id: string): Job {
  return withCuts(job, job.part.cuts.flatMap((cut) => (cut.id === id ? [cut, { ...cut, id: freshId(job, cut.id.replace(/-\d+$/, "")) }] : [cut])));
}

export function cutAdded(job: Job, cut: Cut): Job {
  return withCuts(job, [...job.part.cuts, cut]);
}

export function legOfCutAdded(job: Job, id: string): Job {
  return withCut(job, id, (cut) => (cut.kind === "shaped" ? legAdded(cut, undefined) : cut));
}

export function legOfCutRemoved(job: Job, id: string): Job {
  return withCut(job, id, (cut) => (cut.kind === "shaped" ? legRemoved(cut, undefined) : cut));
}

/** An id no cut of the job has yet, beginning with `stem` and at most 40 characters long. */
export function freshId(job: Job, stem: string): string {
  const taken = new Set(job.part.cuts.map((cut) => cut.id));
  const short = stem.slice(0, 34);
  if (!taken.has(short)) return short;
  let n = 2;
  while (taken.has(`${short}-${n}`)) n += 1;
  return `${short}-${n}`;
}

function withCuts(job: Job, cuts: Cut[]): Job {
  return { ...job, part: { ...job.part, cuts } };
}
