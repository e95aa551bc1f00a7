// Which way does a segment run, and how sharply does it bend?

import { type Segment, arcSweep, cubicSlope, segmentPoint } from "./segment";
import { type Vec2, distance, unit } from "./vector";

/** The unit tangent at u in [0, 1], in the direction of the segment. @throws RangeError for a segment without length. */
export function segmentTangent(segment: Segment, u: number): Vec2 {
  if (segment.kind === "line") return unit(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
  if (segment.kind === "arc") {
    const { x, y } = segmentPoint(segment, u);
    const side = segment.anticlockwise ? 1 : -1;
    return unit(-side * (y - segment.centre.y), side * (x - segment.centre.x));
  }
  const { x, y } = cubicSlope(segment, u);
  if (x * x + y * y > 0) return unit(x, y);
  const near = segmentPoint(segment, u < 0.5 ? 1e-6 : 1 - 1e-6);
  const end = segmentPoint(segment, u);
  return u < 0.5 ? unit(near.x - end.x, near.y - end.y) : unit(end.x - near.x, end.y - near.y);
}

/** Curvature at u in 1/mm, positive where the segment turns left; infinite at a cusp. */
export function segmentCurvature(segment: Segment, u: number): number {
  if (segment.kind === "line") return 0;
  if (segment.kind === "arc") {
    const { sweep, radius } = arcSweep(segment);
    return Math.sign(sweep) / radius;
  }
  const { from, c1, c2, to } = segment;
  const slope = cubicSlope(segment, u);
  const bend = (a: number, b: number, c: number, d: number) => 6 * ((1 - u) * (c - 2 * b + a) + u * (d - 2 * c + b));
  const [bx, by] = [bend(from.x, c1.x, c2.x, to.x), bend(from.y, c1.y, c2.y, to.y)];
  const turn = slope.x * by - slope.y * bx;
  return turn === 0 ? 0 : turn / distance({ x: 0, y: 0 }, slope) ** 3;
}
