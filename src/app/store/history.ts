import { temporal } from "zundo";
import { createStore } from "zustand/vanilla";
import type { Job } from "../../core/index";

// What undo goes back through: the jobs, each with what led to it. Only jobs are held; their drawings are worked out again.

export interface Step {
  readonly job: Job;
  /** What was done to get here, in words. */
  readonly what: string;
  /** Key of the field that did it, `wholeJob` when another job was put in its place, null when no field did. */
  readonly field: string | null;
}

export const wholeJob = "*";

/** One unbroken movement of the hand, such as a drag; all changes that carry the same one are one step. */
export type Gesture = object;

const mostSteps = 200;

/** The history of a job, beginning at `first`. */
export function createHistory(first: Job) {
  const steps = createStore<Step>()(temporal((): Step => ({ job: first, what: "", field: null }), { limit: mostSteps }));
  const time = () => steps.temporal.getState();
  let last: Gesture | null = null;
  /** How things stood before the gesture that goes on. */
  let before: { readonly step: Step; readonly past: Partial<Step>[]; readonly future: Partial<Step>[] } | null = null;

  return {
    /** Adds a step, or changes the last one when the gesture goes on. A job that says the same as before is no step. */
    record(step: Step, gesture: Gesture | null): void {
      if (JSON.stringify(step.job) === JSON.stringify(steps.getState().job)) return;
      if (gesture !== null && gesture === last) time().pause();
      else before = { step: steps.getState(), past: [...time().pastStates], future: [...time().futureStates] };
      steps.setState(step);
      time().resume();
      last = gesture;
    },
    /** Takes the gesture back as if it had never been, what could be made again before it included; null when it is not the last thing done. */
    abandon(gesture: Gesture): { readonly job: Job; readonly step: Step } | null {
      if (gesture !== last || !before) return null;
      const step = steps.getState();
      time().pause();
      steps.setState(before.step);
      time().resume();
      steps.temporal.setState({ pastStates: before.past, futureStates: before.future });
      last = before = null;
      return { job: steps.getState().job, step };
    },
    /** Goes a step back: the job then, and the step taken back; null at the beginning. */
    undo(): { readonly job: Job; readonly step: Step } | null {
      const step = steps.getState();
      if (time().pastStates.length === 0) return null;
      last = null;
      time().undo();
      return { job: steps.getState().job, step };
    },
    /** Goes a step on again: the job then, and the step made again; null when there is none. */
    redo(): { readonly job: Job; readonly step: Step } | null {
      if (time().futureStates.length === 0) return null;
      last = null;
      time().redo();
      const step = steps.getState();
      return { job: step.job, step };
    },
    /** What undo would take back and redo make again, in words; null for nothing. */
    next: (): { readonly undo: string | null; readonly redo: string | null } => ({
      undo: time().pastStates.length > 0 ? steps.getState().what : null,
      redo: time().futureStates.at(-1)?.what ?? null,
    }),
  };
}
