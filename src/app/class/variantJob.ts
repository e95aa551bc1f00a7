import { LIMITS, type Job, type Variant } from "../../core/index";

/** The job of a variant as it is worked on: its title says which it is. */
export function variantJob({ code, job }: Variant): Job {
  const title = job.title === "" ? code : `${job.title.slice(0, LIMITS.title.max - code.length - 2)}, ${code}`;
  return { ...job, title };
}
