import { parseJob, type Development } from "../../core/index";
import firstExample from "../examples/1-lean-to-vent.json";
import { make } from "./attempt";

/** The development on the board when nothing is kept: the first of the ready examples. */
export function firstDevelopment(): Development {
  const read = parseJob(firstExample);
  const made = read.ok ? make(read.job) : null;
  if (!made?.ok) throw new Error("the first example cannot be made");
  return made.development;
}
