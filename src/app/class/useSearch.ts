import { useEffect, useMemo, useState } from "react";
import { exerciseFault, exerciseOf, mostTried, variantSearch, type Exercise, type Job, type Search } from "../../core/index";

/** How far the search for the pieces of a class has come. */
export interface ClassSearch extends Omit<Search, "all"> {
  /** Ways to choose. */
  readonly all: bigint;
  readonly done: boolean;
}

/** Milliseconds of rest after a change, of work between two breaths of the page, and between two words about how far it is. */
const REST = 300, WORK = 12, TOLD = 250;

/** Found beyond what the class needs, so that it can be said whether there is room to choose. */
const BEYOND = 100;

/** The pieces of the exercise on the board for so many students, found little by little; null before the first, or while its ranges have a fault. */
export function useSearch(job: Job, wanted: number): ClassSearch | null {
  const key = useMemo(() => JSON.stringify([job.part, job.development, job.fabrication, job.exercise]), [job]);
  const [found, setFound] = useState<{ readonly key: string; readonly search: ClassSearch } | null>(null);
  useEffect(() => {
    const exercise = exerciseOf(job);
    if (exerciseFault(exercise)) return;
    let stopped = false;
    const timer = setTimeout(() => void searched(exercise, wanted, (search) => !stopped && setFound({ key, search }), () => stopped), REST);
    return () => {
      stopped = true;
      clearTimeout(timer);
    };
    // The job counts by what decides the pieces; its title does not.
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the key stands for the job
  }, [key, wanted]);
  return found?.key === key ? found.search : null;
}

/** Searches until there are enough for the class and some beyond, or it is plain that there are not; null when it was stopped. Lets the page breathe. */
export async function searched(exercise: Exercise, wanted: number, show: (search: ClassSearch) => void, stopped: () => boolean): Promise<ClassSearch | null> {
  let began = performance.now(), told = began;
  const most = mostTried(wanted);
  for (const { all, tried, found, failed } of variantSearch(exercise)) {
    const done = BigInt(tried) >= all || found.length >= wanted + BEYOND || tried >= most;
    if (!done && performance.now() - began < WORK) continue;
    if (done || performance.now() - told >= TOLD) {
      const search = { all, tried, found: [...found], failed: { ...failed }, done };
      show(search);
      told = performance.now();
      if (done) return search;
    }
    await new Promise((resolve) => setTimeout(resolve));
    if (stopped()) return null;
    began = performance.now();
  }
  return null;
}
