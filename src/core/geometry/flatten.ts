// The one place where a curve becomes points. Arcs in even steps; cubics halved until their control points are near
// enough to the chord, which no S-curve and no run beyond the ends of the chord can pass unseen.

import { offChord } from "./offChord";
import { type Arc, type Cubic, type Segment, arcSweep, segmentPoint } from "./segment";
import type { Vec2 } from "./vector";

/**
 * A cubic stays within this share of its farther control point's distance from the chord: the distance from a convex
 * set is convex, so at u it is at most 3u(1-u)² and 3u²(1-u) of the two distances, together 3u(1-u) ≤ 3/4 (derived).
 */
const REACH = 0.75;
/** Most halvings: each takes the distance to about a quarter, so 2^-40 of the first is reached. */
const DEEPEST = 20;

/**
 * Points along a chain of segments (mm), ends included, none twice in a row; straight lines between them stay within
 * `tolerance` (mm, > 0) of the chain.
 * @throws RangeError for a tolerance that is not positive.
 */
export function flattenSegments(segments: readonly Segment[], tolerance: number): Vec2[] {
  if (!(tolerance > 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in (0, ∞)`);
  const points: Vec2[] = segments.slice(0, 1).map(({ from }) => from);
  for (const segment of segments) {
    if (segment.kind === "line") addPoint(points, segment.to);
    else if (segment.kind === "arc") addArc(points, segment, tolerance);
    else addCubic(points, segment, tolerance, DEEPEST);
  }
  return points;
}

function addPoint(points: Vec2[], point: Vec2): void {
  const last = points.at(-1);
  if (!last || last.x !== point.x || last.y !== point.y) points.push(point);
}

function addArc(points: Vec2[], arc: Arc, tolerance: number): void {
  const { sweep, radius } = arcSweep(arc);
  const step = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
  const count = Math.max(2, Math.ceil(Math.abs(sweep) / step));
  for (let i = 1; i <= count; i++) addPoint(points, segmentPoint(arc, i / count));
}

function addCubic(points: Vec2[], cubic: Cubic, tolerance: number, depth: number): void {
  const { from, c1, c2, to } = cubic;
  if (depth === 0 || REACH * Math.max(offChord(c1, from, to), offChord(c2, from, to)) <= tolerance) {
    addPoint(points, to);
    return;
  }
  for (const half of halves(cubic)) addCubic(points, half, tolerance, depth - 1);
}

/** The two halves of a cubic, by the construction of de Casteljau. */
function halves({ kind, from, c1, c2, to }: Cubic): [Cubic, Cubic] {
  const [a, b, c] = [middleOf(from, c1), middleOf(c1, c2), middleOf(c2, to)];
  const [d, e] = [middleOf(a, b), middleOf(b, c)];
  const middle = middleOf(d, e);
  return [{ kind, from, c1: a, c2: d, to: middle }, { kind, from: middle, c1: e, c2: c, to }];
}

function middleOf(a: Vec2, b: Vec2): Vec2 {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
