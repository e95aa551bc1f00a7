import * as v from "valibot";
import { crossCheck } from "./crossCheck";
import type { Job } from "./job";
import { bringUpToDate } from "./migrate";
import type { Problem } from "./problem";
import { problemOfIssue } from "./problemOfIssue";
import { jobSchema } from "./schema";

// Is this a job, and if not, what is wrong with it and where?

export type ParsedJob = { ok: true; job: Job } | { ok: false; problems: Problem[] };

/** More problems than a reader will mend in one go; a hostile file could have hundreds of thousands. */
const MOST_PROBLEMS = 100;

/**
 * The job in `data` (as from JSON), brought to the present version, or the problems with its shape, one a field and at most 100.
 * Fills in the documented defaults of fields left out; refuses unknown fields, saying the first of each object.
 * Whether the part can be made is not looked at. Never throws on plain data; `data` is not changed, and the job
 * shares nothing with it. For an older file the fields of the problems are those of the present version.
 */
export function parseJob(data: unknown): ParsedJob {
  const current = bringUpToDate(data);
  if (!current.ok) return current;
  const result = v.safeParse(jobSchema, current.data, { abortPipeEarly: true });
  if (!result.success) return { ok: false, problems: firstOfEachField(result.issues.map(problemOfIssue)) };
  const problems = crossCheck(result.output).slice(0, MOST_PROBLEMS);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, job: result.output };
}

function firstOfEachField(problems: Problem[]): Problem[] {
  const byField = new Map<string, Problem>();
  for (const problem of problems) if (!byField.has(problem.field)) byField.set(problem.field, problem);
  return [...byField.values()].slice(0, MOST_PROBLEMS);
}
