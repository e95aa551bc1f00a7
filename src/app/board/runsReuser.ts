import type { Item } from "../../drawing/display";
import { reusedItems } from "../../drawing/board/reusedItems";
import { runsByClause, type Run } from "./runs";

/** The runs of one drawing after the other: what is as it was the last time stays the same object, so that nothing of it is drawn anew. */
export function runsReuser(): (items: readonly Item[]) => readonly Run[] {
  let last: ReadonlyMap<string, Run> = new Map();
  return (drawn) => {
    const runs = runsByClause(drawn).map((run) => {
      const before = last.get(run.key);
      if (!before) return run;
      const items = reusedItems(before.items, run.items);
      return items.length === before.items.length && items.every((item, i) => item === before.items[i]) ? before : { ...run, items };
    });
    last = new Map(runs.map((run) => [run.key, run]));
    return runs;
  };
}
