// From unknown data to a development: check, then develop.

import { developJob, type Outcome } from "./developJob";
import { parseJob } from "./job/parseJob";

/**
 * The whole development of a job given as unknown data, or its problems; never throws for bad data.
 * `options.chordTolerance` is that of `developJob`.
 * @throws RangeError for a tolerance outside its range.
 */
export function develop(data: unknown, options: Parameters<typeof developJob>[1] = {}): Outcome {
  const parsed = parseJob(data);
  return parsed.ok ? developJob(parsed.job, options) : parsed;
}
