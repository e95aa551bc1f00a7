import type { Item } from "../../drawing/display";
import { reusedItems } from "../../drawing/board/reusedItems";
import { runsByClause, type Run } from "./runs";

let last: { readonly items: readonly Item[]; readonly runs: readonly Run[] } = { items: [], runs: [] };

/** The runs of the board's items. What is as it was the last time stays the same object, so that nothing of it is drawn anew. */
export function reusedRuns(drawn: readonly Item[]): readonly Run[] {
  const items = reusedItems(last.items, drawn);
  const runs = runsByClause(items).map((run, i) => {
    const before = last.runs[i];
    return before && before.clause === run.clause && before.items.length === run.items.length && before.items.every((item, k) => item === run.items[k]) ? before : run;
  });
  last = { items, runs };
  return runs;
}
