// Do closed outlines cross themselves or each other? Straight pieces sorted from left to right; only those that stand
// over the same x are compared.

import { flattenSegments } from "./flatten";
import type { Segment } from "./segment";
import type { Vec2 } from "./vector";

/** A crossing, and the two segments that cross. */
export interface OutlineCrossing<S extends Segment> {
  readonly at: Vec2;
  readonly segments: readonly [S, S];
}

interface Piece<S> {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly segment: S;
}

/**
 * A place where the outlines cross, or null. Touching is not crossing; overlaps of less than about `tolerance` mm are
 * not seen.
 */
export function outlineCrossing<S extends Segment>(outlines: readonly (readonly S[])[], tolerance: number): OutlineCrossing<S> | null {
  const pieces = outlines.flatMap((outline) => outline.flatMap((segment) => piecesOf(segment, tolerance)));
  pieces.sort((a, b) => low(a) - low(b));
  let active: Piece<S>[] = [];
  for (const piece of pieces) {
    active = active.filter((other) => Math.max(other.from.x, other.to.x) >= low(piece));
    for (const other of active) {
      const at = crossing(piece, other);
      if (at) return { at, segments: [other.segment, piece.segment] };
    }
    active.push(piece);
  }
  return null;
}

function piecesOf<S extends Segment>(segment: S, tolerance: number): Piece<S>[] {
  const points = flattenSegments([segment], tolerance);
  return points.slice(1).flatMap((to, i) => {
    const from = points[i];
    return from ? [{ from, to, segment }] : [];
  });
}

function low({ from, to }: Piece<unknown>): number {
  return Math.min(from.x, to.x);
}

/** Where the insides of two straight pieces cross, or null. */
function crossing(a: Piece<unknown>, b: Piece<unknown>): Vec2 | null {
  if (Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y) || Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)) return null;
  const [p, q] = [side(a, b.from), side(a, b.to)];
  const [r, s] = [side(b, a.from), side(b, a.to)];
  if (!(p * q < 0 && r * s < 0)) return null;
  const u = r / (r - s);
  return { x: a.from.x + u * (a.to.x - a.from.x), y: a.from.y + u * (a.to.y - a.from.y) };
}

/** Twice the area of the triangle of a piece and a point, 0 where the point lies on it to rounding. */
function side({ from, to }: Piece<unknown>, point: Vec2): number {
  const [ax, ay, bx, by] = [to.x - from.x, to.y - from.y, point.x - from.x, point.y - from.y];
  const area = ax * by - ay * bx;
  return Math.abs(area) <= 1e-12 * (Math.abs(ax * by) + Math.abs(ay * bx)) + 1e-12 ? 0 : area;
}
