// A stretch of a segment, as a segment of the same kind.

import { type Cubic, type Segment, segmentPoint } from "./segment";
import type { Vec2 } from "./vector";

/**
 * The part of a segment from u0 to u1, 0 ≤ u0 < u1 ≤ 1. Exact; whole ends keep their own points. `from` and `to` may be
 * given where its ends must be those of a neighbour to the last digit.
 */
export function segmentPart<S extends Segment>(segment: S, u0: number, u1: number, from = segmentPoint(segment, u0), to = segmentPoint(segment, u1)): S {
  if (segment.kind !== "cubic") return { ...segment, from, to };
  return { ...segment, ...cubicPart(segment, u0, u1), from, to };
}

/** De Casteljau's two handles of the part. */
function cubicPart({ from, c1, c2, to }: Cubic, u0: number, u1: number): Pick<Cubic, "c1" | "c2"> {
  const blossom = (a: number, b: number, c: number): Vec2 => {
    const mix = (p: Vec2, q: Vec2, u: number): Vec2 => ({ x: p.x + u * (q.x - p.x), y: p.y + u * (q.y - p.y) });
    const [p, q, r] = [mix(from, c1, a), mix(c1, c2, a), mix(c2, to, a)];
    return mix(mix(p, q, b), mix(q, r, b), c);
  };
  return { c1: blossom(u0, u0, u1), c2: blossom(u0, u1, u1) };
}
