// At which height does an element of the pipe meet one face of a cutter, and how steep is the edge there?
// Closed forms; a circle's root is taken from its two factors so that it keeps its digits where an upright tangent
// and the contour of the pipe fall together.

import type { Cutter, Reach } from "./cutter";

/** Rounding of a factor that ought to be zero, relative to the lengths that make it. */
const FACTOR_NOISE = 4e-15;

/**
 * Height z in mm at which the element at θ meets the face. Beyond the end of a circle's reach the height of its
 * upright tangent is given (the continuous extension), so that the ends of an edge are exact.
 */
export function faceHeight(cutter: Cutter, face: number, theta: number): number {
  const { radius } = cutter;
  const psi = theta - cutter.direction;
  if (cutter.kind === "plane") return cutter.height + cutter.slope * radius * Math.cos(psi);
  const reach = reachAt(cutter.reaches, face);
  if (reach.kind === "line") return reach.z + reach.slope * radius * Math.sin(psi);
  return reach.z + reach.side * circleRise(reach, radius, psi);
}

/**
 * The direction of the edge on the unrolled surface of the cutter's radius, towards growing θ: (ds, dz), not of unit
 * length, never zero.
 * For a circle it comes from the gradient of (t - t0)² + (z - z0)² = ρ²; where that vanishes (the upright tangent lies
 * on the contour of the pipe) from the second order: dz/ds = ±√(ρ / r), away from or towards the crossing.
 */
export function faceTangent(cutter: Cutter, face: number, theta: number, towards: 1 | -1): { ds: number; dz: number } {
  const { radius } = cutter;
  const psi = theta - cutter.direction;
  if (cutter.kind === "plane") return { ds: 1, dz: -cutter.slope * Math.sin(psi) };
  const reach = reachAt(cutter.reaches, face);
  if (reach.kind === "line") return { ds: 1, dz: reach.slope * Math.cos(psi) };
  const rise = circleRise(reach, radius, psi);
  const fall = -(radius * Math.sin(psi) - reach.t) * Math.cos(psi) * reach.side;
  const least = 1e-7 * reach.radius;
  if (rise < least && Math.abs(fall) < least) return { ds: 1, dz: reach.side * towards * Math.sqrt(reach.radius / radius) };
  return { ds: rise, dz: fall };
}

function reachAt(reaches: readonly Reach[], face: number): Reach {
  const reach = reaches[face];
  if (!reach) throw new RangeError(`no face ${face} among ${reaches.length}`);
  return reach;
}

/** √(ρ² - (t - t0)²) at t = r sin ψ, 0 beyond the circle. */
function circleRise(circle: Extract<Reach, { kind: "arc" }>, radius: number, psi: number): number {
  const scale = FACTOR_NOISE * (radius + circle.radius + Math.abs(circle.t));
  const t = radius * Math.sin(psi);
  if (Math.abs(t) <= 0.9 * radius) {
    return root(clean(circle.radius - (t - circle.t), scale), clean(circle.radius + (t - circle.t), scale));
  }
  // Near the contour t = ±(r - d) with d known to its last digit: keep d apart.
  const side = Math.sign(t);
  const d = radius * shortfall(psi);
  const towards = clean(circle.radius + side * circle.t - radius, scale);
  const away = circle.radius - side * circle.t + radius - d;
  return root(towards === 0 ? d : clean(towards + d, scale), clean(away, scale));
}

function clean(factor: number, scale: number): number {
  return factor <= scale && factor >= -scale ? 0 : factor;
}

/** 1 - |sin ψ| without loss of digits near the contour. */
function shortfall(psi: number): number {
  const cosine = Math.cos(psi);
  return (cosine * cosine) / (1 + Math.abs(Math.sin(psi)));
}

/** √(a b), 0 where either factor is negative (beyond the circle). */
function root(a: number, b: number): number {
  return a > 0 && b > 0 ? Math.sqrt(a * b) : 0;
}
