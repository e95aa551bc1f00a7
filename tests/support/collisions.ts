import { boundsOfItem } from "../../src/drawing/bounds";
import { boxesOverlap, growBox } from "../../src/drawing/box";
import { clearSpace } from "../../src/drawing/clearSpace";
import type { Item, TextItem } from "../../src/drawing/display";

export const textsOf = (items: readonly Item[]): TextItem[] => items.filter((item): item is TextItem => item.kind === "text");

/** Pairs of a figure and something that runs into it, as words. */
export function collisions(items: readonly Item[]): string[] {
  const figures = textsOf(items);
  const found: string[] = [];
  const others = items.filter(({ kind }) => kind !== "text").map((item) => {
    const space = clearSpace(0);
    space.take([item]);
    return { item, space, bounds: boundsOfItem(item) };
  });
  const boxes = figures.map(boundsOfItem);
  figures.forEach((figure, i) => {
    const box = growBox(boundsOfItem(figure), -0.05);
    for (const [k, other] of figures.entries()) if (k > i && boxesOverlap(box, boxes[k] ?? box)) found.push(`${figure.text} / ${other.text}`);
    if (figure.clear) return;
    for (const { item, space, bounds } of others) if (boxesOverlap(box, bounds) && !space.isFree(box)) found.push(`${figure.text} / ${"pen" in item ? item.pen : item.kind}`);
  });
  return found;
}
