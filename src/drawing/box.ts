// Upright rectangles of the sheet: joining, growing, overlapping.

import type { Vec2 } from "../core/index";

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Holds nothing; joins to anything. */
export const EMPTY_BOX: Box = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };

/** The smallest box around points; `EMPTY_BOX` for none. */
export function boxOfPoints(points: Iterable<Vec2>): Box {
  let { left, right, bottom, top } = EMPTY_BOX;
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top };
}

/** The smallest box around both. */
export function joinBoxes(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    right: Math.max(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
    top: Math.max(a.top, b.top),
  };
}

/** The box with `margin` (mm) added on every side. */
export function growBox(box: Box, margin: number): Box {
  return { left: box.left - margin, right: box.right + margin, bottom: box.bottom - margin, top: box.top + margin };
}

/** The box moved by (x, y). */
export function moveBox(box: Box, { x, y }: Vec2): Box {
  return { left: box.left + x, right: box.right + x, bottom: box.bottom + y, top: box.top + y };
}

/** Whether the insides of two boxes share a place; touching sides do not count. */
export function boxesOverlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}
