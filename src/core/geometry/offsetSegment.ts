// A segment moved sideways: the curve at one distance from it.

import { fitCubics } from "./fit";
import { type Segment, arcSweep, segmentPoint } from "./segment";
import { segmentCurvature, segmentTangent } from "./segmentTangent";
import type { Vec2 } from "./vector";

/** The parallel, or the place of the segment whose bend is too sharp for it. */
export type OffsetSegment =
  | { readonly ok: true; readonly segments: readonly Segment[] }
  | { readonly ok: false; readonly at: Vec2 };

/** Places at which a cubic's bend is looked at. */
const PROBES = 48;

/** A parallel closer than this share of its distance to the centre of the bend has no use: it is nearly a cusp. */
const LEAST = 1e-3;

/**
 * The curve at `distance` mm to the right of the segment (left when negative): lines and arcs exactly, cubics within
 * `tolerance` mm. Not possible where the segment bends to that side with a radius of `distance` or less.
 */
export function offsetSegment(segment: Segment, distance: number, tolerance: number): OffsetSegment {
  const sharp = sharpest(segment, distance);
  if (sharp !== null) return { ok: false, at: segmentPoint(segment, sharp) };
  if (segment.kind === "cubic") {
    const curve = { point: (u: number) => beside(segment, u, distance), tangent: (u: number) => segmentTangent(segment, u) };
    return { ok: true, segments: fitCubics(curve, tolerance) };
  }
  return { ok: true, segments: [{ ...segment, from: beside(segment, 0, distance), to: beside(segment, 1, distance) }] };
}

/** The point at `distance` mm to the right of the segment's point at u. */
export function beside(segment: Segment, u: number, distance: number): Vec2 {
  const { x, y } = segmentPoint(segment, u);
  const along = segmentTangent(segment, u);
  return { x: x + distance * along.y, y: y - distance * along.x };
}

function sharpest(segment: Segment, distance: number): number | null {
  if (segment.kind === "line") return null;
  if (segment.kind === "arc") {
    const { sweep, radius } = arcSweep(segment);
    return radius + Math.sign(sweep) * distance > LEAST * Math.abs(distance) ? null : 0.5;
  }
  let worst = LEAST;
  let place: number | null = null;
  for (let i = 0; i <= PROBES; i++) {
    const left = 1 + distance * segmentCurvature(segment, i / PROBES);
    if (left >= worst) continue;
    worst = left;
    place = i / PROBES;
  }
  return place;
}
