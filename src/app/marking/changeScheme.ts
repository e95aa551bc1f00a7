import type { Job } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { put } from "./markingTokens";
import { readyItems, type ReadyScheme } from "./readySchemes";

// What the verbs of the scheme do to the job.

export function schemeBegun(job: Job, name: ReadyScheme, trade: TradeWords): Job {
  return put(job, { items: readyItems(name, trade) });
}

/** An item more at the end, for the teacher's eye; its id is the first that is free. */
export function itemAdded(job: Job): Job {
  const { items } = job.marking;
  const taken = new Set(items.map(({ id }) => id));
  let n = items.length + 1;
  while (taken.has(`item-${n}`)) n++;
  return put(job, { items: [...items, { id: `item-${n}`, text: "", marks: 1, by: "eye" }] });
}

export function itemRemoved(job: Job, id: string): Job {
  return put(job, { items: job.marking.items.filter((item) => item.id !== id) });
}

/** The item a place up (-1) or down (1). */
export function itemMoved(job: Job, id: string, by: 1 | -1): Job {
  const items = [...job.marking.items];
  const at = items.findIndex((item) => item.id === id);
  const [item] = items.splice(at, 1);
  if (at < 0 || !item) return job;
  items.splice(Math.max(0, Math.min(items.length, at + by)), 0, item);
  return put(job, { items });
}
