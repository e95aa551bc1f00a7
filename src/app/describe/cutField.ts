import type { Cut, Job } from "../../core/index";
import type { NumberToken, ChoiceToken, Option } from "./token";

// Makes the fields of one cut: each finds its cut by id, so that a field still means the same cut after a move.

type Of<K extends Cut["kind"]> = Extract<Cut, { kind: K }>;

export interface CutFields<C extends Cut> {
  number(name: string, quantity: NumberToken["quantity"], label: string, value: number, change: (cut: C, value: number) => C): NumberToken;
  choice(name: string, label: string, value: string, options: readonly Option[], change: (cut: C, value: string) => C): ChoiceToken;
  put<V>(change: (cut: C, value: V) => C): (job: Job, value: V) => Job;
  key(name: string): string;
  field(name: string): string;
}

/** The field makers of the cut that stands at this index; `name` is the path inside the cut, as in the job file. */
export function cutFields<K extends Cut["kind"]>(cut: Of<K>, index: number): CutFields<Of<K>> {
  const key = (name: string) => `${cut.id}.${name}`;
  const field = (name: string) => `part.cuts.${index}.${name}`;
  const put =
    <V>(change: (cut: Of<K>, value: V) => Of<K>) =>
    (job: Job, value: V) =>
      withCut(job, cut.id, (found) => (found.kind === cut.kind ? change(found as Of<K>, value) : found));
  return {
    key,
    field,
    put,
    number: (name, quantity, label, value, change) => ({ kind: "number", key: key(name), field: field(name), quantity, label, value, put: put(change) }),
    choice: (name, label, value, options, change) => ({ kind: "choice", key: key(name), field: field(name), label, value, options, put: put(change) }),
  };
}

/** The job with the cut of this id changed; the same job when there is none. */
export function withCut(job: Job, id: string, change: (cut: Cut) => Cut): Job {
  if (!job.part.cuts.some((cut) => cut.id === id)) return job;
  return { ...job, part: { ...job.part, cuts: job.part.cuts.map((cut) => (cut.id === id ? change(cut) : cut)) } };
}
