// Where do two chains of segments cross, the one cut short there and the other begun there?

import { type Segment, segmentPoint } from "./segment";
import { segmentPart } from "./segmentPart";
import { segmentTangent } from "./segmentTangent";
import { type Vec2, distance } from "./vector";

/** A place on a chain: segment number and u in [0, 1]. */
interface Place {
  readonly segment: number;
  readonly u: number;
}

interface Crossing {
  readonly first: Place;
  readonly second: Place;
}

const PARTS = 16;
const ROUNDS = 12;

/**
 * The first chain up to where the second crosses it, then the second from there on; of several crossings the one that
 * leaves out fewest segments. Null when they do not cross. `cutFirst` is the number of the segment of the first that was cut.
 */
export function joinedAtCrossing<A extends Segment, B extends Segment>(
  first: readonly A[], second: readonly B[],
): { segments: (A | B)[]; cutFirst: number } | null {
  for (let left = 0; left < first.length + second.length - 1; left++) {
    for (let j = Math.max(0, left - first.length + 1); j <= Math.min(left, second.length - 1); j++) {
      const i = first.length - 1 - (left - j);
      const [a, b] = [first[i], second[j]];
      const uv = a && b ? segmentCrossing(a, b) : null;
      if (uv) return { segments: joined(first, second, { first: { segment: i, u: uv.u }, second: { segment: j, u: uv.v } }), cutFirst: i };
    }
  }
  return null;
}

function joined<A extends Segment, B extends Segment>(first: readonly A[], second: readonly B[], at: Crossing): (A | B)[] {
  const a = first[at.first.segment];
  const b = second[at.second.segment];
  if (!a || !b) throw new RangeError("no such segment");
  const meeting = segmentPoint(a, at.first.u);
  const head = at.first.u > 0 ? [segmentPart(a, 0, at.first.u, a.from, meeting)] : [];
  const tail = at.second.u < 1 ? [segmentPart(b, at.second.u, 1, meeting)] : [];
  return [...first.slice(0, at.first.segment), ...head, ...tail, ...second.slice(at.second.segment + 1)];
}

/** The crossing of two segments nearest to the end of the first, as u on the first and v on the second; null when there is none. */
export function segmentCrossing(a: Segment, b: Segment): { u: number; v: number } | null {
  const [pa, pb] = [pointsOf(a), pointsOf(b)];
  for (let i = PARTS - 1; i >= 0; i--) {
    for (let j = 0; j < PARTS; j++) {
      const [a0, a1, b0, b1] = [pa[i], pa[i + 1], pb[j], pb[j + 1]];
      if (!a0 || !a1 || !b0 || !b1 || !near(a0, a1, b0, b1)) continue;
      const start = chordCrossing(a0, a1, b0, b1);
      const found = start && refined(a, b, (i + start.u) / PARTS, (j + start.v) / PARTS);
      if (found) return found;
    }
  }
  return null;
}

function pointsOf(segment: Segment): Vec2[] {
  return Array.from({ length: PARTS + 1 }, (_, i) => segmentPoint(segment, i / PARTS));
}

/** Whether the boxes of two chords come within a chord's own bulge of each other. */
function near(a0: Vec2, a1: Vec2, b0: Vec2, b1: Vec2): boolean {
  const slack = 0.1 * (distance(a0, a1) + distance(b0, b1));
  return Math.min(a0.x, a1.x) <= Math.max(b0.x, b1.x) + slack && Math.min(b0.x, b1.x) <= Math.max(a0.x, a1.x) + slack &&
    Math.min(a0.y, a1.y) <= Math.max(b0.y, b1.y) + slack && Math.min(b0.y, b1.y) <= Math.max(a0.y, a1.y) + slack;
}

/** Where the lines of two chords cross, if about within both (half a chord may be missed: the curves decide). */
function chordCrossing(a0: Vec2, a1: Vec2, b0: Vec2, b1: Vec2): { u: number; v: number } | null {
  const [ax, ay, bx, by] = [a1.x - a0.x, a1.y - a0.y, b1.x - b0.x, b1.y - b0.y];
  const determinant = ax * by - ay * bx;
  if (Math.abs(determinant) < 1e-12 * Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by))) return null;
  const u = ((b0.x - a0.x) * by - (b0.y - a0.y) * bx) / determinant;
  const v = ((b0.x - a0.x) * ay - (b0.y - a0.y) * ax) / determinant;
  return u >= -0.5 && u <= 1.5 && v >= -0.5 && v <= 1.5 ? { u, v } : null;
}

/** Newton's method on a(u) = b(v); null unless it ends within both segments at one point (1e-9 mm). */
function refined(a: Segment, b: Segment, u0: number, v0: number): { u: number; v: number } | null {
  let [u, v] = [hold(u0), hold(v0)];
  for (let round = 0; round < ROUNDS; round++) {
    const [p, q] = [segmentPoint(a, u), segmentPoint(b, v)];
    const gap = { x: q.x - p.x, y: q.y - p.y };
    if (Math.abs(gap.x) + Math.abs(gap.y) < 1e-9) return { u, v };
    const [s, t] = [speed(a, u), speed(b, v)];
    const determinant = s.y * t.x - s.x * t.y;
    if (determinant === 0) return null;
    u = hold(u + (gap.y * t.x - gap.x * t.y) / determinant);
    v = hold(v + (s.x * gap.y - s.y * gap.x) / determinant);
  }
  return null;
}

function hold(u: number): number {
  return Math.max(0, Math.min(1, u));
}

/** The derivative by u, from the tangent and the distance between two near places. */
function speed(segment: Segment, u: number): Vec2 {
  const [low, high] = [Math.max(0, u - 1e-4), Math.min(1, u + 1e-4)];
  const rate = distance(segmentPoint(segment, low), segmentPoint(segment, high)) / (high - low);
  const { x, y } = segmentTangent(segment, u);
  return { x: x * rate, y: y * rate };
}
