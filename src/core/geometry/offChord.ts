// How far is a point from a straight piece?

import { type Vec2, lengthOf } from "./vector";

/** Distance in mm of a point from the chord a-b, from its nearer end when it lies beyond; a chord without length is its place. */
export function offChord(point: Vec2, a: Vec2, b: Vec2): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / square;
  const u = Math.max(0, Math.min(1, along));
  return lengthOf(point.x - a.x - u * dx, point.y - a.y - u * dy);
}
