// The job with new values in some fields of its pipe or of one of its cuts.

import type { Job } from "../../core/index";
import type { Ref } from "../display";
import type { Value, Values } from "./grip";

/** The job changed; the job itself when it has no such cut. Values go in unchecked: developing the job checks them. */
export function withValues(job: Job, clause: Ref["clause"], values: Values): Job {
  if (clause === "part") return { ...job, part: changed(job.part, values) };
  const { cuts } = job.part;
  if (!cuts.some(({ id }) => clause === `cut:${id}`)) return job;
  return { ...job, part: { ...job.part, cuts: cuts.map((cut) => (clause === `cut:${cut.id}` ? changed(cut, values) : cut)) } };
}

function changed<T>(of: T, values: Values): T {
  return Object.entries(values).reduce((now, [path, value]) => put(now, path.split("."), value) as T, of);
}

/** A copy with the value at the path; what the path does not touch is shared. @throws RangeError where the path leads nowhere. */
function put(of: unknown, [name, ...rest]: readonly string[], value: Value): unknown {
  if (name === undefined) return value;
  if (typeof of !== "object" || of === null || !(name in of)) throw new RangeError(`no field ${name}`);
  const inner = put((of as Record<string, unknown>)[name], rest, value);
  return Array.isArray(of) ? of.map((one: unknown, i) => (String(i) === name ? inner : one)) : { ...of, [name]: inner };
}
