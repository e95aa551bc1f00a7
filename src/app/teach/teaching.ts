import { create } from "zustand";
import type { Step } from "../../drawing/steps/steps";
import type { Way } from "../../drawing/steps/way";

export const speeds = ["slow", "usual", "quick"] as const;
export type Speed = (typeof speeds)[number];

export interface Teaching {
  /** Those of the job on the board; none before it is drawn for the first time. */
  readonly steps: readonly Step[];
  /** Name of the step shown; the first when the job has no such step. */
  readonly step: string;
  /** Whether a step that can goes from station to station. */
  readonly each: boolean;
  readonly way: Way;
  readonly playing: boolean;
  readonly speed: Speed;
}

export const useTeaching = create<Teaching>()(() => ({ steps: [], step: "data", each: false, way: "screen", playing: false, speed: "usual" }));

/** Where a lesson stands: which step, and which station is in hand, null for none. */
export interface Standing {
  readonly index: number;
  readonly station: number | null;
}

type Steps = readonly Pick<Step, "parts">[];

/** The place after (1) or before (-1) this one; null past either end. */
export function moved({ index, station }: Standing, by: 1 | -1, steps: Steps, each: boolean): Standing | null {
  const next = (station ?? -1) + by;
  const inHand = stationsOf(steps, index, each);
  if (next >= 0 && next < inHand) return { index, station: next };
  const to = index + by;
  if (to < 0 || to >= steps.length) return null;
  const count = stationsOf(steps, to, each);
  if (count > 0) return { index: to, station: by > 0 ? 0 : count - 1 };
  return { index: to, station: inHand > 0 ? null : station };
}

/** Up to which station a step is drawn when this one is in hand: null for all of it. */
export function drawnStation(steps: Steps, { index, station }: Standing, each: boolean): number | null {
  const count = stationsOf(steps, index, each);
  return count === 0 ? null : Math.min(station ?? 0, count - 1);
}

/** How many stations a step goes through one after the other; none when it is drawn at once. */
export function stationsOf(steps: Steps, index: number, each: boolean): number {
  return each ? (steps[index]?.parts.length ?? 0) : 0;
}
