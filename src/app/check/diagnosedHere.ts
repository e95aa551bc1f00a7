import { type Diagnosis, diagnose } from "../../core/index";
import type { DiagnosisAsked } from "./diagnosisAsked";

/** What was probably done, worked out on the page. A file of its own, so that only this much of the core is fetched for it. */
export function diagnosedHere({ job, readings, allowed }: DiagnosisAsked): Diagnosis {
  return diagnose(job, readings, allowed);
}
