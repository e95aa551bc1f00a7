// From what a calibration page measures to the correction of its printer.

import type { Problem } from "../../core/index";
import type { CalibrationLengths } from "./calibrationSection";
import type { PrinterCorrection } from "./setup";
import { correctionProblems } from "./setupProblems";

export type CorrectionOutcome =
  | { readonly ok: true; readonly correction: PrinterCorrection }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The correction for a printer whose rulers, of `lengths` mm on a page without correction, measure `measured` mm; outside ±5 % a problem. */
export function correctionFrom(printer: string, lengths: CalibrationLengths, measured: CalibrationLengths): CorrectionOutcome {
  const correction = { printer, across: lengths.across / measured.across, along: lengths.along / measured.along };
  const problems = correctionProblems(correction);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, correction };
}
