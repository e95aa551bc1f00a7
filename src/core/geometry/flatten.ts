// The one place where a curve becomes points: adaptive halving, several points tested so that an S-curve is not missed.

import { type Segment, arcSweep, segmentPoint } from "./segment";
import { type Vec2, lengthOf } from "./vector";

const PROBES = [0.25, 0.5, 0.75];
const DEEPEST = 20;

/**
 * Points along a chain of segments, ends included, none twice in a row; straight lines between them stay within
 * `tolerance` (mm, > 0) of the chain.
 * @throws RangeError for a tolerance that is not positive.
 */
export function flattenSegments(segments: readonly Segment[], tolerance: number): Vec2[] {
  if (!(tolerance > 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in (0, ∞)`);
  const points: Vec2[] = [];
  for (const segment of segments) {
    if (points.length === 0) points.push(segment.from);
    if (segment.kind === "line") points.push(segment.to);
    else if (segment.kind === "arc") arcPoints(segment, tolerance, points);
    else halve(segment, 0, segment.from, 1, segment.to, tolerance, DEEPEST, points);
  }
  return points;
}

function arcPoints(segment: Extract<Segment, { kind: "arc" }>, tolerance: number, points: Vec2[]): void {
  const { sweep, radius } = arcSweep(segment);
  const step = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
  const count = Math.max(2, Math.ceil(Math.abs(sweep) / step));
  for (let i = 1; i <= count; i++) points.push(segmentPoint(segment, i / count));
}

function halve(
  segment: Segment, from: number, start: Vec2, to: number, end: Vec2, tolerance: number, depth: number, points: Vec2[],
): void {
  const flat = PROBES.every((part) => offChord(segmentPoint(segment, from + part * (to - from)), start, end) <= tolerance);
  if (flat || depth === 0) {
    points.push(end);
    return;
  }
  const middle = (from + to) / 2;
  const point = segmentPoint(segment, middle);
  halve(segment, from, start, middle, point, tolerance, depth - 1, points);
  halve(segment, middle, point, to, end, tolerance, depth - 1, points);
}

/** Distance of a point from the chord a-b (from its nearer end when it lies beyond). */
export function offChord(point: Vec2, a: Vec2, b: Vec2): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / square;
  const u = Math.max(0, Math.min(1, along));
  return lengthOf(point.x - a.x - u * dx, point.y - a.y - u * dy);
}
