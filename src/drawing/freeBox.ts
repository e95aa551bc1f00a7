// Where on the sheet is there room for something more?

import { type Box, boxesOverlap } from "./box";
import { boxWithin } from "./boxWithin";

/** The largest box inside `window` that covers none of `taken` and is at least `width` × `height`; null when there is none. */
export function freeBox(window: Box, taken: readonly Box[], { width, height }: { width: number; height: number }): Box | null {
  const lefts = [window.left, ...taken.map(({ right }) => right)], rights = [window.right, ...taken.map(({ left }) => left)];
  const bottoms = [window.bottom, ...taken.map(({ top }) => top)], tops = [window.top, ...taken.map(({ bottom }) => bottom)];
  let best: Box | null = null;
  for (const left of lefts) for (const right of rights) for (const bottom of bottoms) for (const top of tops) {
    const box = { left, right, bottom, top };
    const fits = boxWithin(box, window) && right - left >= width && top - bottom >= height;
    if (fits && area(box) > area(best) && !taken.some((other) => boxesOverlap(box, other))) best = box;
  }
  return best;
}

function area(box: Box | null): number {
  return box ? (box.right - box.left) * (box.top - box.bottom) : 0;
}
