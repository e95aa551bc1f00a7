// The drawing as it stands at one step: everything up to it, in the order in which the board draws it, and what of it is new.

import type { Board } from "../board/board";
import type { Item } from "../display";
import type { Step, StepPart } from "./steps";

export interface Drawn {
  /** Thin lines, to be drawn first. */
  readonly construction: readonly Item[];
  /** Items of the board. */
  readonly items: readonly Item[];
  /** Those of both that this step, or this station of it, adds. */
  readonly fresh: ReadonlySet<Item>;
}

/**
 * The drawing at the step with this index; where the step goes from station to station, up to `station` (an index into its
 * parts) or, for null, with all of them.
 */
export function drawnAt(board: Pick<Board, "items">, steps: readonly Step[], index: number, station: number | null): Drawn {
  const now = steps[index];
  if (!now) throw new RangeError(`no step ${index} among ${steps.length}`);
  const parts = station === null ? now.parts : now.parts.slice(0, station + 1);
  const shown = [...steps.slice(0, index), { ...now, parts }];
  const added = (of: (one: Step | StepPart) => readonly Item[]) => shown.flatMap((step) => [...of(step), ...step.parts.flatMap(of)]);
  const items = new Set(added((one) => one.items));
  // The first station comes with what the step draws for all.
  const fresh = [...(station === null || station === 0 || now.parts.length === 0 ? [now] : []), ...(station === null ? parts : parts.slice(-1))];
  return {
    construction: added((one) => one.construction),
    items: board.items.filter((item) => items.has(item)),
    fresh: new Set(fresh.flatMap((one) => [...one.items, ...one.construction])),
  };
}
