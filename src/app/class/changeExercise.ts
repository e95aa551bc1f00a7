import type { ExerciseChoices, Job, VariantRange } from "../../core/index";
import { changing } from "../store/changing";
import { classWords } from "../words/class";

/** Changes what differs from student to student, in the job on the board. */
export function changeExercise(change: (exercise: ExerciseChoices) => ExerciseChoices): void {
  changing((by) => by.change((job): Job => ({ ...job, exercise: change(job.exercise) }), classWords.changed));
}

/** The exercise with this range instead of the one for the same number. */
export function withRange(exercise: ExerciseChoices, range: VariantRange): ExerciseChoices {
  const at = exercise.ranges.findIndex(({ field }) => field === range.field);
  return { ...exercise, ranges: at < 0 ? [...exercise.ranges, range] : exercise.ranges.map((one, i) => (i === at ? range : one)) };
}

/** The exercise without ranges for this number. */
export function withoutRange(exercise: ExerciseChoices, field: string): ExerciseChoices {
  return { ...exercise, ranges: exercise.ranges.filter((one) => one.field !== field) };
}

/** A choice in the list or out of it. */
export function switched<T>(all: readonly T[], one: T, on: boolean): T[] {
  const others = all.filter((other) => JSON.stringify(other) !== JSON.stringify(one));
  return on ? [...others, one] : others;
}
