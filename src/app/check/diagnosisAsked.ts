import type { Job, Readings } from "../../core/index";

/** What the likely mistakes are looked for in. */
export interface DiagnosisAsked {
  readonly job: Job;
  readonly readings: Readings;
  readonly allowed: { readonly tolerance: number; readonly stepped: boolean };
}
