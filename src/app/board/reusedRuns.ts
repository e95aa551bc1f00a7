import type { Item } from "../../drawing/display";
import { reusedItems } from "../../drawing/board/reusedItems";
import { runsByClause, type Run } from "./runs";

let last: ReadonlyMap<string, Run> = new Map();

/** The runs of the board's items. What is as it was the last time stays the same object, so that nothing of it is drawn anew. */
export function reusedRuns(drawn: readonly Item[]): readonly Run[] {
  const runs = runsByClause(drawn).map((run) => {
    const before = last.get(run.key);
    if (!before) return run;
    const items = reusedItems(before.items, run.items);
    return items.length === before.items.length && items.every((item, i) => item === before.items[i]) ? before : { ...run, items };
  });
  last = new Map(runs.map((run) => [run.key, run]));
  return runs;
}
