// All ways to choose, counted through: each number from 0 stands for one value of every range, one seam and one hand.

import { noExercise } from "../job/exerciseChoices";
import type { Job } from "../job/job";
import type { Exercise } from "./exercise";
import { putNumber, rangeValues } from "./rangeValues";

/** How many ways there are to choose. */
export function combinationCount(exercise: Exercise): bigint {
  return choicesOf(exercise).reduce((product, { length }) => product * BigInt(length), 1n);
}

/** The job of one of them, `index` from 0 below their count, an exercise no more. Shares nothing with the exercise. */
export function combination(exercise: Exercise, index: bigint): Job {
  // Plain data, as from a file.
  const job = { ...(JSON.parse(JSON.stringify(exercise.job)) as Job), exercise: noExercise() };
  let rest = index;
  for (const choices of choicesOf(exercise)) {
    const count = BigInt(choices.length);
    choices[Number(rest % count)]?.(job);
    rest /= count;
  }
  return job;
}

type Put = (job: Job) => void;

function choicesOf({ ranges, seams, hands }: Exercise): Put[][] {
  const put = ranges.map((range) => rangeValues(range).map((value): Put => (job) => putNumber(job, range.field, value)));
  const seam = distinct(seams).map((one): Put => (job) => void (job.development.seam = { ...one }));
  const hand = distinct(hands).map((one): Put => (job) => void (job.fabrication.hand = one));
  return [...put, seam, hand].filter(({ length }) => length > 0);
}

function distinct<T>(all: readonly T[]): T[] {
  return [...new Map(all.map((one) => [JSON.stringify(one), one])).values()];
}
