import type { Item } from "../../drawing/display";
import { howManyth } from "./howManyth";

/** Neighbouring items that show the same part of the job; drawn as one group, so that lighting it up redraws nothing else. */
export interface Run {
  readonly clause: string | null;
  readonly items: readonly Item[];
  /** Names the run from drawing to drawing: the how manyth of its part of the job. */
  readonly key: string;
}

export function runsByClause(items: readonly Item[]): Run[] {
  const runs: { clause: string | null; items: Item[]; key: string }[] = [];
  const named = howManyth();
  for (const item of items) {
    const clause = clauseOf(item);
    const last = runs.at(-1);
    if (last && last.clause === clause) last.items.push(item);
    else runs.push({ clause, items: [item], key: named(clause ?? "") });
  }
  return runs;
}

function clauseOf(item: Item): string | null {
  return item.kind === "group" || item.kind === "surface" ? null : (item.ref?.clause ?? null);
}
