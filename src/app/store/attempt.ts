import { develop, type Development, type Job, type ParsedQuantity, type Problem } from "../../core/index";
import { without } from "./without";

// Whether a change to the job can be made. Changes that had to wait are tried again with every later one, so
// that two fields that only fit together can be typed one after the other.

export type Change = (job: Job) => Job;

export type Fault = { readonly kind: "quantity"; readonly reason: Extract<ParsedQuantity, { ok: false }>["reason"] } | { readonly kind: "problem"; readonly problem: Problem } | { readonly kind: "failed" };

/** Something typed that is not in the job: the text as it stands, what is wrong, and the change it asks for, if it could be read. */
export interface Draft {
  readonly text: string;
  readonly fault: Fault;
  readonly change: Change | null;
}

export type Drafts = Readonly<Record<string, Draft>>;

export type Made = { readonly ok: true; readonly development: Development } | { readonly ok: false; readonly fault: Fault };

/** The development of this job, or why there is none. An exception in the working out is a fault like any other. */
export function make(job: Job): Made {
  try {
    const outcome = develop(job);
    if (outcome.ok) return { ok: true, development: outcome.development };
    const [problem] = outcome.problems;
    return { ok: false, fault: problem ? { kind: "problem", problem } : { kind: "failed" } };
  } catch {
    return { ok: false, fault: { kind: "failed" } };
  }
}

export interface Attempt {
  readonly development: Development | null;
  readonly drafts: Drafts;
}

/**
 * Tries a change named `key`, first together with all that waits, then alone, then each that waits on top of it.
 * `development` is null when the job stays as it was; then the draft of `key` says why.
 */
export function attempt(job: Job, drafts: Drafts, key: string, text: string, change: Change): Attempt {
  const waiting = Object.entries(without(drafts, key));
  const readable = waiting.flatMap(([name, draft]) => (draft.change ? [{ name, change: draft.change }] : []));
  if (readable.length) {
    const together = make(readable.reduce((changed, one) => one.change(changed), change(job)));
    if (together.ok) return { development: together.development, drafts: without(drafts, key, ...readable.map((one) => one.name)) };
  }
  const alone = make(change(job));
  if (!alone.ok) return { development: null, drafts: { ...drafts, [key]: { text, fault: alone.fault, change } } };
  return retried(alone.development, without(drafts, key), readable);
}

function retried(development: Development, drafts: Drafts, readable: readonly { name: string; change: Change }[]): Attempt {
  let now = development;
  let left = drafts;
  for (const { name, change } of readable) {
    const next = make(change(now.job));
    if (next.ok) {
      now = next.development;
      left = without(left, name);
    }
  }
  return { development: now, drafts: left };
}
