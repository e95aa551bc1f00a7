// In which corner of the window is there room for a small thing of a given size?

import { type Box, boxesOverlap } from "../box";

/** A box of that size in the first free corner, lower ones before upper ones and left before right; null when all are taken. */
export function freeCorner({ left, right, bottom, top }: Box, taken: readonly Box[], { width, height }: { width: number; height: number }): Box | null {
  const corners = [bottom, top - height].flatMap((low) => [left, right - width].map((start) => ({ left: start, right: start + width, bottom: low, top: low + height })));
  const fits = width <= right - left && height <= top - bottom;
  return (fits && corners.find((box) => !taken.some((other) => boxesOverlap(box, other)))) || null;
}
