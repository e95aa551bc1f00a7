// A smooth curve as few cubic Béziers within a tolerance. Each cubic takes the curve's own end points and end
// tangents; its two handle lengths are solved so that the curve's points at one and two thirds lie on it, which
// leaves an error of sixth order in the length of the piece (derived; compared with dense sampling in the tests).

import { type Cubic, cubicSlope, segmentPoint } from "./segment";
import { type Vec2, distance, lengthOf } from "./vector";

/** A smooth curve over u in [0, 1]. */
export interface SmoothCurve {
  /** The point at u. */
  readonly point: (u: number) => Vec2;
  /** The unit tangent at u, towards growing u. */
  readonly tangent: (u: number) => Vec2;
}

/** Where the cubic is made to meet the curve, and where its error is looked at; shares of u. */
const ANCHORS = [1 / 3, 2 / 3] as const;
const PROBES = [0.06, 0.14, 0.22, 0.42, 0.5, 0.58, 0.78, 0.86, 0.94] as const;
/** The error between the probes may be greater than at them: keep to this share of the tolerance there. */
const SAFETY = 0.8;
/** Most divisions one within another, and most parts at one division. */
const DEEPEST = 10;
const MOST_PARTS = 6;

/**
 * Cubics along `curve`, each starting exactly where the one before ends, within `tolerance` (mm, > 0) of it. Where the
 * curve is not smooth, or the tolerance below its rounding, division ends after ten levels with what is then reached.
 * @throws RangeError for a tolerance that is not positive.
 */
export function fitCubics(curve: SmoothCurve, tolerance: number): Cubic[] {
  if (!(tolerance > 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in (0, ∞)`);
  const cubics: Cubic[] = [];
  const ends = (u: number): End => ({ u, point: curve.point(u), tangent: curve.tangent(u) });
  fitPart(curve, ends(0), ends(1), tolerance * SAFETY, DEEPEST, cubics);
  return cubics;
}

interface End {
  readonly u: number;
  readonly point: Vec2;
  readonly tangent: Vec2;
}

function fitPart(curve: SmoothCurve, start: End, end: End, tolerance: number, depth: number, cubics: Cubic[]): void {
  const cubic = fitOne(curve, start, end);
  const error = greatestError(curve, cubic, start.u, end.u);
  if (error <= tolerance || depth === 0) {
    cubics.push(cubic);
    return;
  }
  const parts = Math.max(2, Math.min(MOST_PARTS, Math.ceil((error / tolerance) ** (1 / 6))));
  let last = start;
  for (let i = 1; i <= parts; i++) {
    const u = start.u + ((end.u - start.u) * i) / parts;
    const next = i === parts ? end : { u, point: curve.point(u), tangent: curve.tangent(u) };
    fitPart(curve, last, next, tolerance, depth - 1, cubics);
    last = next;
  }
}

function withHandles(start: End, end: End, alpha: number, beta: number): Cubic {
  const { point: from, tangent: leaving } = start;
  const { point: to, tangent: arriving } = end;
  return {
    kind: "cubic", from, to,
    c1: { x: from.x + alpha * leaving.x, y: from.y + alpha * leaving.y },
    c2: { x: to.x - beta * arriving.x, y: to.y - beta * arriving.y },
  };
}

/** Newton's method on the two handle lengths; a step that leaves the sensible range ends it. */
function fitOne(curve: SmoothCurve, start: End, end: End): Cubic {
  const chord = distance(start.point, end.point);
  const anchors = ANCHORS.map((part) => curve.point(start.u + part * (end.u - start.u)));
  let alpha = chord / 3;
  let beta = chord / 3;
  for (let round = 0; round < 6; round++) {
    const cubic = withHandles(start, end, alpha, beta);
    const [one, two] = anchors.map((point, i) => handleEquation(cubic, point, ANCHORS[i] ?? 0.5, start, end));
    if (!one || !two) break;
    const determinant = one.byAlpha * two.byBeta - one.byBeta * two.byAlpha;
    if (Math.abs(determinant) < 1e-9) break;
    const nextAlpha = alpha + (one.miss * two.byBeta - two.miss * one.byBeta) / determinant;
    const nextBeta = beta + (two.miss * one.byAlpha - one.miss * two.byAlpha) / determinant;
    if (!sensible(nextAlpha, chord) || !sensible(nextBeta, chord)) break;
    const moved = Math.abs(nextAlpha - alpha) + Math.abs(nextBeta - beta);
    alpha = nextAlpha;
    beta = nextBeta;
    if (moved < 1e-6 * chord) break;
  }
  return withHandles(start, end, alpha, beta);
}

function sensible(handle: number, chord: number): boolean {
  return handle > chord * 0.02 && handle < chord * 2;
}

/** How far (mm) a point misses the cubic along the cubic's normal, and how that changes with the handles. */
function handleEquation(cubic: Cubic, point: Vec2, guess: number, start: End, end: End) {
  const { u, normal, miss } = missOf(cubic, point, guess);
  const v = 1 - u;
  const byAlpha = 3 * v * v * u * (normal.x * start.tangent.x + normal.y * start.tangent.y);
  const byBeta = -3 * v * u * u * (normal.x * end.tangent.x + normal.y * end.tangent.y);
  return { miss, byAlpha, byBeta };
}

function missOf(cubic: Cubic, point: Vec2, guess: number): { u: number; normal: Vec2; miss: number } {
  let u = guess;
  for (let round = 0; round < 4; round++) {
    const at = segmentPoint(cubic, u);
    const slope = cubicSlope(cubic, u);
    const square = slope.x * slope.x + slope.y * slope.y;
    if (square === 0) break;
    const step = ((point.x - at.x) * slope.x + (point.y - at.y) * slope.y) / square;
    u = Math.max(0, Math.min(1, u + step));
    if (Math.abs(step) < 1e-4) break;
  }
  const at = segmentPoint(cubic, u);
  const slope = cubicSlope(cubic, u);
  const length = lengthOf(slope.x, slope.y) || 1;
  const normal = { x: -slope.y / length, y: slope.x / length };
  return { u, normal, miss: (point.x - at.x) * normal.x + (point.y - at.y) * normal.y };
}

function greatestError(curve: SmoothCurve, cubic: Cubic, from: number, to: number): number {
  let greatest = 0;
  for (const part of PROBES) {
    const point = curve.point(from + part * (to - from));
    const { u } = missOf(cubic, point, part);
    greatest = Math.max(greatest, distance(point, segmentPoint(cubic, u)));
  }
  return greatest;
}
