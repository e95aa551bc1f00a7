// What does a stretch of an edge look like on the sheet: a straight line, a true arc, or neither?

import { type Segment, type Vec2, fitCubics } from "../../core/index";

const PROBES = [0.07, 0.19, 0.31, 0.43, 0.57, 0.69, 0.81, 0.93];

/** A line or arc is drawn as one when the stretch keeps to it within this part of its size. */
const SAME = 1e-7;

/** Step of the differences that give tangents, as a part of the stretch. */
const STEP = 1e-5;

/**
 * Segments along `point` (u from 0 to 1; mm), within `tolerance` mm of it: one line or one arc where it is one, else cubics.
 * None for a stretch without length.
 */
export function traceCurve(point: (u: number) => Vec2, tolerance: number): Segment[] {
  const from = point(0), to = point(1);
  const probes = PROBES.map(point);
  const size = Math.max(...[to, ...probes].map(({ x, y }) => Math.hypot(x - from.x, y - from.y)));
  if (!(size > 1e-9)) return [];
  if (isStraight(from, to, probes, SAME * size)) return [{ kind: "line", from, to }];
  const arc = arcThrough(from, point(0.5), to);
  if (arc && arc.radius < 1e4 * size && probes.every(({ x, y }) => Math.abs(Math.hypot(x - arc.centre.x, y - arc.centre.y) - arc.radius) < SAME * size)) {
    return [{ kind: "arc", from, to, centre: arc.centre, anticlockwise: arc.anticlockwise }];
  }
  return fitCubics({ point, tangent: (u) => tangentOf(point, u) }, tolerance);
}

/** Whether probes lie on the chord, one after the other. */
function isStraight(from: Vec2, to: Vec2, probes: readonly Vec2[], noise: number): boolean {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length <= noise) return false;
  const ex = (to.x - from.x) / length, ey = (to.y - from.y) / length;
  let last = 0;
  return probes.every(({ x, y }) => {
    const along = (x - from.x) * ex + (y - from.y) * ey;
    const ahead = along >= last - noise && along <= length + noise;
    last = along;
    return ahead && Math.abs((y - from.y) * ex - (x - from.x) * ey) <= noise;
  });
}

/** The circle through three points, and whether it is run through anticlockwise; null when they lie in line. */
function arcThrough(a: Vec2, b: Vec2, c: Vec2): { centre: Vec2; radius: number; anticlockwise: boolean } | null {
  const bx = b.x - a.x, by = b.y - a.y, cx = c.x - a.x, cy = c.y - a.y;
  const cross = 2 * (bx * cy - by * cx);
  if (cross === 0) return null;
  const b2 = bx * bx + by * by, c2 = cx * cx + cy * cy;
  const x = (cy * b2 - by * c2) / cross, y = (bx * c2 - cx * b2) / cross;
  return { centre: { x: a.x + x, y: a.y + y }, radius: Math.hypot(x, y), anticlockwise: cross > 0 };
}

function tangentOf(point: (u: number) => Vec2, u: number): Vec2 {
  const a = point(Math.max(0, u - STEP)), b = point(Math.min(1, u + STEP));
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}
