import { exerciseOf, noExercise, variantOfCode, type Job } from "../../../core/index";
import type { CodeFault } from "../../class/codeFault";
import { variantJob } from "../../class/variantJob";
import type { ListRow } from "./markingList";

export type RowJob = { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly reason: CodeFault };

/** The piece of a student, marked as the exercise is; why not, when the exercise has none of their code. */
export function rowJob(exercise: Job, { code }: Pick<ListRow, "code">): RowJob {
  if (code === "") return { ok: true, job: exercise };
  const found = variantOfCode(exerciseOf(exercise), code);
  if (!found.ok) return found;
  return { ok: true, job: { ...variantJob({ code, job: found.job }), exercise: noExercise(), marking: exercise.marking } };
}
