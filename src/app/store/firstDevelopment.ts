import { developJob, type Development, type Job } from "../../core/index";
import firstExample from "../examples/1-lean-to-vent.json";

/** The development on the board when nothing is kept: the first of the ready examples, which the tests have checked. */
export function firstDevelopment(): Development {
  const outcome = developJob(firstExample as unknown as Job);
  if (!outcome.ok) throw new Error("the first example cannot be made");
  return outcome.development;
}
