// Which stretches of an element lie inside a cutter? Exact, in closed form.

import type { Cutter, FaceRef, SweepCutter } from "./cutter";
import { faceHeight } from "./faceHeight";

/** A stretch of an element from z = from to z = to (mm), and the faces that end it (null: it has no end there). */
export interface RemovedStretch {
  readonly from: number;
  readonly to: number;
  readonly fromFace: FaceRef | null;
  readonly toFace: FaceRef | null;
}

/**
 * The stretches of the element at θ inside `cutter` (its number in the piece is `index`), from low to high.
 * θ must not run along the cutter's edge: there the answer jumps, ask on both sides.
 */
export function removedStretches(cutter: Cutter, index: number, theta: number): RemovedStretch[] {
  if (cutter.kind === "sweep") return sweepStretches(cutter, index, theta);
  const z = faceHeight(cutter, 0, theta);
  const face = { cutter: index, face: 0 };
  return cutter.removes === "above"
    ? [{ from: z, to: Infinity, fromFace: face, toFace: null }]
    : [{ from: -Infinity, to: z, fromFace: null, toFace: face }];
}

function sweepStretches(cutter: SweepCutter, index: number, theta: number): RemovedStretch[] {
  const psi = theta - cutter.direction;
  const depth = cutter.radius * Math.cos(psi);
  if (depth < cutter.depth[0] || depth > cutter.depth[1]) return [];
  const t = cutter.radius * Math.sin(psi);
  const crossings: { z: number; face: FaceRef }[] = [];
  cutter.reaches.forEach((reach, face) => {
    if (t >= reach.from && t < reach.to) crossings.push({ z: faceHeight(cutter, face, theta), face: { cutter: index, face } });
  });
  crossings.sort((a, b) => a.z - b.z);
  const stretches: RemovedStretch[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const low = crossings[i];
    const high = crossings[i + 1];
    if (low && high) stretches.push({ from: low.z, to: high.z, fromFace: low.face, toFace: high.face });
  }
  return stretches;
}
