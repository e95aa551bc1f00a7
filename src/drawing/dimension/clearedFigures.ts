// Figures that found no clear place stand on paper cleared for them.

import { boundsOfItem } from "../bounds";
import { clearSpace } from "../clearSpace";
import type { Item } from "../display";

/** The same items; each figure that a line or arrowhead runs through is marked to be kept clear. */
export function clearedFigures(items: readonly Item[]): Item[] {
  const space = clearSpace(0);
  space.take(items.filter(({ kind }) => kind !== "text"));
  return items.map((item) => (item.kind === "text" && !space.isFree(boundsOfItem(item)) ? { ...item, clear: true } : item));
}
