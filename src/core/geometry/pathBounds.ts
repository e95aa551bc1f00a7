// The smallest upright rectangle round some segments, from their ends and turning places: exact.

import { type Cubic, type Segment, arcSweep, segmentPoint } from "./segment";
import type { Vec2 } from "./vector";

export interface Bounds {
  readonly from: Vec2;
  readonly to: Vec2;
}

/** Lower left and upper right corner; null without segments. */
export function pathBounds(segments: readonly Segment[]): Bounds | null {
  const points = segments.flatMap((segment) => [segment.from, segment.to, ...turningPoints(segment)]);
  if (points.length === 0) return null;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { from: { x: least(xs), y: least(ys) }, to: { x: -least(xs.map((x) => -x)), y: -least(ys.map((y) => -y)) } };
}

function least(values: readonly number[]): number {
  return values.reduce((low, value) => Math.min(low, value), Infinity);
}

/** Where a segment runs level or upright between its ends. */
function turningPoints(segment: Segment): Vec2[] {
  if (segment.kind === "line") return [];
  if (segment.kind === "cubic") return [...turns(segment, "x"), ...turns(segment, "y")].map((u) => segmentPoint(segment, u));
  const { start, sweep, radius } = arcSweep(segment);
  const [low, high] = [Math.min(start, start + sweep), Math.max(start, start + sweep)];
  const first = Math.ceil(low / (Math.PI / 2));
  const count = Math.max(0, Math.floor(high / (Math.PI / 2)) - first + 1);
  const sides = [[1, 0], [0, 1], [-1, 0], [0, -1]] as const;
  return Array.from({ length: count }, (_, k) => {
    const [x, y] = sides[(((first + k) % 4) + 4) % 4] ?? [0, 0];
    return { x: segment.centre.x + radius * x, y: segment.centre.y + radius * y };
  });
}

/** u in (0, 1) where one coordinate of a cubic stands still: the roots of its derivative, a quadratic. */
function turns({ from, c1, c2, to }: Cubic, axis: "x" | "y"): number[] {
  const [p, q, r] = [c1[axis] - from[axis], c2[axis] - c1[axis], to[axis] - c2[axis]];
  const [a, b, c] = [p - 2 * q + r, q - p, p];
  const square = b * b - a * c;
  if (square < 0) return [];
  // Both roots without loss of digits: t / a and c / t.
  const t = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square));
  return [t / a, c / t].filter((u) => u > 0 && u < 1);
}
