// Where does a face found on one surface of the wall meet the same face found on another? Both heights are one function
// of r cos ψ or r sin ψ, so the places are known outright: most are tangencies, which root finding would blur.

import { wrapTurn } from "../numeric/angle";
import type { Cutter } from "./cutter";
import { sameOwner } from "./owner";

interface FaceOfCutter {
  readonly cutter: Cutter;
  readonly face: number;
}

/** Whether two faces are one face of one cutter, found on two surfaces. */
export function areTwins(a: FaceOfCutter, b: FaceOfCutter): boolean {
  return a.face === b.face && a.cutter.radius !== b.cutter.radius && sameOwner(a.cutter.owner, b.cutter.owner);
}

/** Angles in [0, 2π) where the face of `cutter` has the same height as on the surface of `other` mm, its ends not looked at. */
export function twinAngles(cutter: Cutter, face: number, other: number): number[] {
  const { direction } = cutter;
  if (cutter.kind === "plane") return [direction + Math.PI / 2, direction - Math.PI / 2].map(wrapTurn);
  const reach = cutter.reaches[face];
  if (!reach || (reach.kind === "line" && reach.slope === 0)) return [];
  const level = [direction, direction + Math.PI];
  // Of a circle also where both places lie equally far to the two sides of its centre: (R + r) sin ψ = 2 t.
  const sine = reach.kind === "arc" ? (2 * reach.t) / (cutter.radius + other) : 0;
  if (sine === 0 || Math.abs(sine) > 1) return level.map(wrapTurn);
  const psi = Math.asin(sine);
  return [...level, direction + psi, direction + Math.PI - psi].map(wrapTurn);
}
