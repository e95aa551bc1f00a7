// Along the girth, where can two faces meet? Both heights are written as trigonometric polynomials (a plane or a
// straight line: degree 1; a circle: its equation) and the unknown height is eliminated; closed forms up to that point.

import { wrapTurn } from "../numeric/angle";
import { ROOT_NOISE } from "../numeric/tolerance";
import { type TrigPolynomial, trigConstant, trigLinear, trigProduct, trigSum } from "../numeric/trigPolynomial";
import { trigRoots } from "../numeric/trigRoots";
import type { Cutter } from "./cutter";
import { faceHeight } from "./faceHeight";
import { areTwins, twinAngles } from "./twinAngles";

/** A face with what is needed to tell quickly that two faces cannot meet. */
export interface Face {
  readonly cutter: Cutter;
  readonly face: number;
  readonly equation: FaceEquation;
  /** Least and greatest height in mm. */
  readonly low: number;
  readonly high: number;
}

/** Flat: z = height(θ). Round: across(θ)² + (z - centre)² = radius². */
type FaceEquation =
  | { readonly kind: "flat"; readonly height: TrigPolynomial }
  | { readonly kind: "round"; readonly across: TrigPolynomial; readonly centre: number; readonly radius: number };

/** The faces of a cutter that reach the surface of its radius. */
export function facesOf(cutter: Cutter): Face[] {
  const { radius } = cutter;
  if (cutter.kind === "plane") {
    const swing = cutter.slope * radius;
    const height = trigLinear(cutter.height, swing * Math.cos(cutter.direction), swing * Math.sin(cutter.direction));
    const reach = Math.abs(swing);
    return [{ cutter, face: 0, equation: { kind: "flat", height }, low: cutter.height - reach, high: cutter.height + reach }];
  }
  const sine = radius * Math.cos(cutter.direction);
  const cosine = -radius * Math.sin(cutter.direction);
  return cutter.reaches.flatMap((reach, face): Face[] => {
    const from = Math.max(reach.from, -radius);
    const to = Math.min(reach.to, radius);
    if (from > to) return [];
    if (reach.kind === "line") {
      const ends = [reach.z + reach.slope * from, reach.z + reach.slope * to];
      const height = trigLinear(reach.z, reach.slope * cosine, reach.slope * sine);
      return [{ cutter, face, equation: { kind: "flat", height }, low: Math.min(...ends), high: Math.max(...ends) }];
    }
    const equation: FaceEquation = { kind: "round", across: trigLinear(-reach.t, cosine, sine), centre: reach.z, radius: reach.radius };
    const edge = reach.z + reach.side * reach.radius;
    return [{ cutter, face, equation, low: Math.min(reach.z, edge), high: Math.max(reach.z, edge) }];
  });
}

/**
 * Angles in [0, 2π) where the two faces have the same height, to rounding; a tangency may come twice about 1e-8 apart.
 * `size` (mm) is the measure for noise.
 */
export function meetingAngles(a: Face, b: Face, size: number): number[] {
  const noise = ROOT_NOISE * size;
  if (a.low > b.high + noise || b.low > a.high + noise) return [];
  const meets = (theta: number): boolean =>
    onFace(a, theta, noise) && onFace(b, theta, noise) &&
    Math.abs(faceHeight(a.cutter, a.face, theta) - faceHeight(b.cutter, b.face, theta)) <= 100 * noise;
  const candidates = areTwins(a, b) ? twinAngles(a.cutter, a.face, b.cutter.radius) : trigRoots(meetingEquation(a.equation, b.equation, size));
  return candidates.filter(meets);
}

function onFace({ cutter, face }: Face, theta: number, noise: number): boolean {
  if (cutter.kind === "plane") return true;
  const reach = cutter.reaches[face];
  const psi = theta - cutter.direction;
  const t = cutter.radius * Math.sin(psi);
  const depth = cutter.radius * Math.cos(psi);
  return reach !== undefined && t >= reach.from - noise && t <= reach.to + noise &&
    depth >= cutter.depth[0] - noise && depth <= cutter.depth[1] + noise;
}

function meetingEquation(a: FaceEquation, b: FaceEquation, size: number): TrigPolynomial {
  if (a.kind === "flat" && b.kind === "flat") return trigSum(a.height, b.height, -1);
  if (a.kind === "flat" && b.kind === "round") return flatOnRound(a.height, b);
  if (a.kind === "round" && b.kind === "flat") return flatOnRound(b.height, a);
  if (a.kind === "round" && b.kind === "round") return roundOnRound(a, b, size);
  throw new RangeError("unknown face");
}

type RoundEquation = Extract<FaceEquation, { kind: "round" }>;

function flatOnRound(height: TrigPolynomial, { across, centre, radius }: RoundEquation): TrigPolynomial {
  const rise = trigSum(height, trigConstant(centre), -1);
  return circle(across, trigProduct(rise, rise), radius);
}

/** Subtract the two circles: what is left is linear in z, or free of z when both centres stand level. */
function roundOnRound(a: RoundEquation, b: RoundEquation, size: number): TrigPolynomial {
  const lift = b.centre - a.centre;
  const own = trigSum(trigProduct(a.across, a.across), trigConstant(a.radius * a.radius), -1);
  const other = trigSum(trigProduct(b.across, b.across), trigConstant(b.radius * b.radius), -1);
  const difference = trigSum(trigSum(own, other, -1), trigConstant(-lift * lift));
  if (Math.abs(lift) < 1e-9 * size) return difference;
  // difference + 2 lift (z - centre of a) = 0
  const rise = trigProduct(difference, trigConstant(-1 / (2 * lift)));
  return circle(a.across, trigProduct(rise, rise), a.radius);
}

function circle(across: TrigPolynomial, riseSquared: TrigPolynomial, radius: number): TrigPolynomial {
  return trigSum(trigSum(trigProduct(across, across), riseSquared), trigConstant(radius * radius), -1);
}

/**
 * Angles in [0, 2π) at which a sweep's own outline or depth begins, ends or turns: all its corners and upright tangents,
 * and the contour elements a circle of it reaches over. A face touched there is touched by a fourfold root, which root
 * finding may leave out.
 */
export function cornerAngles(cutter: Cutter, size: number): number[] {
  const { radius } = cutter;
  if (cutter.kind === "plane") return [];
  const angles: number[] = [];
  const contours = [radius, -radius].filter((t) => cutter.reaches.some(({ kind, from, to }) => kind === "arc" && from <= t && t <= to));
  const across = new Set([...contours, ...cutter.reaches.flatMap(({ from, to }) => [from, to])]);
  for (const t of across) {
    const sine = snapped(t / radius, size / radius);
    if (Math.abs(sine) > 1) continue;
    const psi = Math.asin(sine);
    angles.push(cutter.direction + psi, cutter.direction + Math.PI - psi);
  }
  for (const depth of cutter.depth) {
    const cosine = snapped(depth / radius, size / radius);
    if (Math.abs(cosine) > 1) continue;
    const psi = Math.acos(cosine);
    angles.push(cutter.direction + psi, cutter.direction - psi);
  }
  return angles.map(wrapTurn);
}

/** Sines and cosines within noise of ±1 are ±1: the place is on the contour. */
function snapped(ratio: number, size: number): number {
  return Math.abs(Math.abs(ratio) - 1) < 1e-12 * size ? Math.sign(ratio) : ratio;
}
