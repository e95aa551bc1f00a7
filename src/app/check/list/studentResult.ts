import { develop, marks, type Diagnosis, type Job, type Marks } from "../../../core/index";
import type { CodeFault } from "../../class/codeFault";
import type { Diagnoser } from "../diagnoser";
import { marksByEye } from "../marksByEye";
import { emptySheet, type Sheet } from "../sheet";
import { checkOf, diagnosisAsked, type Check } from "../useCheck";
import type { ListRow } from "./markingList";
import { rowJob } from "./rowJob";

/** What became of one student's drawing; `fault`: there is no piece of their code, or it cannot be made. */
export type StudentResult =
  | { readonly ok: true; readonly row: ListRow; readonly check: Check; readonly diagnosis: Diagnosis | null; readonly marks: Marks }
  | { readonly ok: false; readonly row: ListRow; readonly fault: CodeFault | "not-made" };

/** The result of a student's sheet. */
export async function studentResult(exercise: Job, row: ListRow, sheet: Sheet = emptySheet, diagnoser: Diagnoser): Promise<StudentResult> {
  const found = rowJob(exercise, row);
  if (!found.ok) return { ok: false, row, fault: found.reason };
  const made = develop(found.job);
  const piece = made.ok ? made.development.pieces[0] : undefined;
  if (!made.ok || !piece) return { ok: false, row, fault: "not-made" };
  const check = checkOf(made.development.job, piece, sheet);
  const diagnosis = check.verdict ? await diagnoser.ask(diagnosisAsked(check, check.verdict)) : null;
  return { ok: true, row, check, diagnosis, marks: marks(found.job.marking.items, { judged: check.verdict?.judged ?? [], diagnosis, eye: marksByEye(sheet) }) };
}
