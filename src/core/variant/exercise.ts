// An exercise for a class: one job, and what of it may differ from student to student.

import type { ExerciseChoices } from "../job/exerciseChoices";
import type { Job } from "../job/job";

export interface Exercise extends ExerciseChoices {
  readonly job: Job;
}

/** The exercise a job carries. */
export function exerciseOf(job: Job): Exercise {
  return { job, ...job.exercise };
}
