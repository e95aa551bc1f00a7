// The three kinds of drawn segment, and what can be asked of each: point, length, area, reverse.

import { TURN, wrapTurn } from "../numeric/angle";
import { integrate } from "../numeric/quadrature";
import { type Vec2, distance, lengthOf } from "./vector";

export interface Line {
  readonly kind: "line";
  readonly from: Vec2;
  readonly to: Vec2;
}

export interface Arc {
  readonly kind: "arc";
  readonly from: Vec2;
  readonly to: Vec2;
  readonly centre: Vec2;
  readonly anticlockwise: boolean;
}

/** A cubic Bézier segment. */
export interface Cubic {
  readonly kind: "cubic";
  readonly from: Vec2;
  readonly c1: Vec2;
  readonly c2: Vec2;
  readonly to: Vec2;
}

export type Segment = Line | Arc | Cubic;

/** Start angle and signed sweep (radians; positive anticlockwise, magnitude in (0, 2π]; from = to is a whole circle), radius in mm. */
export function arcSweep(arc: Arc): { start: number; sweep: number; radius: number } {
  const start = Math.atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x);
  const end = Math.atan2(arc.to.y - arc.centre.y, arc.to.x - arc.centre.x);
  const turn = wrapTurn(arc.anticlockwise ? end - start : start - end);
  const sweep = turn === 0 ? TURN : turn;
  return { start, sweep: arc.anticlockwise ? sweep : -sweep, radius: distance(arc.from, arc.centre) };
}

/** The point at u in [0, 1]; at 0 and 1 the very ends. */
export function segmentPoint(segment: Segment, u: number): Vec2 {
  if (u === 0) return segment.from;
  if (u === 1) return segment.to;
  if (segment.kind === "cubic") return cubicPoint(segment, u);
  if (segment.kind === "line") {
    const { from, to } = segment;
    return { x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) };
  }
  const { start, sweep, radius } = arcSweep(segment);
  const angle = start + u * sweep;
  return { x: segment.centre.x + radius * Math.cos(angle), y: segment.centre.y + radius * Math.sin(angle) };
}

function cubicPoint({ from, c1, c2, to }: Cubic, u: number): Vec2 {
  const v = 1 - u;
  const a = v * v * v, b = 3 * v * v * u, c = 3 * v * u * u, d = u * u * u;
  return { x: a * from.x + b * c1.x + c * c2.x + d * to.x, y: a * from.y + b * c1.y + c * c2.y + d * to.y };
}

/** The derivative (mm) of a cubic by u at u. */
export function cubicSlope({ from, c1, c2, to }: Cubic, u: number): Vec2 {
  const v = 1 - u;
  const a = 3 * v * v, b = 6 * v * u, c = 3 * u * u;
  return {
    x: a * (c1.x - from.x) + b * (c2.x - c1.x) + c * (to.x - c2.x),
    y: a * (c1.y - from.y) + b * (c2.y - c1.y) + c * (to.y - c2.y),
  };
}

/** Length in mm, to 1e-8 of itself or better for cubics. */
export function segmentLength(segment: Segment): number {
  if (segment.kind === "line") return distance(segment.from, segment.to);
  if (segment.kind === "arc") {
    const { sweep, radius } = arcSweep(segment);
    return Math.abs(sweep) * radius;
  }
  const speed = (u: number) => {
    const slope = cubicSlope(segment, u);
    return lengthOf(slope.x, slope.y);
  };
  const guess = distance(segment.from, segment.c1) + distance(segment.c1, segment.c2) + distance(segment.c2, segment.to);
  return integrate(speed, 0, 1, guess * 1e-8);
}

/** ½ ∫ (x dy - y dx) along the segment in mm²: its share in the area of a closed loop, in closed form (Green's theorem). */
export function segmentArea(segment: Segment): number {
  const { from, to } = segment;
  const chord = cross(from, to) / 2;
  if (segment.kind === "line") return chord;
  if (segment.kind === "arc") {
    const { sweep, radius } = arcSweep(segment);
    return chord + (radius * radius * (sweep - Math.sin(sweep))) / 2;
  }
  const { c1, c2 } = segment;
  return (
    (6 * cross(from, c1) + 3 * cross(from, c2) + cross(from, to) + 3 * cross(c1, c2) + 3 * cross(c1, to) + 6 * cross(c2, to)) / 20
  );
}

function cross(a: Vec2, b: Vec2): number {
  return a.x * b.y - a.y * b.x;
}

/** The same segment drawn backwards. */
export function reverseSegment<S extends Segment>(segment: S): S {
  if (segment.kind === "cubic") return { ...segment, from: segment.to, c1: segment.c2, c2: segment.c1, to: segment.from };
  if (segment.kind === "arc") return { ...segment, from: segment.to, to: segment.from, anticlockwise: !segment.anticlockwise };
  return { ...segment, from: segment.to, to: segment.from };
}
