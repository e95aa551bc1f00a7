// Where along the girth is a face highest or lowest?

import type { Cutter } from "./cutter";

/** Angles θ (radians, any turn) where the height of the face turns, whether or not its outline reaches so far. */
export function turningAngles(cutter: Cutter, face: number): number[] {
  const { direction, radius } = cutter;
  if (cutter.kind === "plane") return cutter.slope === 0 ? [] : [direction, direction + Math.PI];
  const reach = cutter.reaches[face];
  if (!reach || (reach.kind === "line" && reach.slope === 0)) return [];
  const contour = [direction + Math.PI / 2, direction - Math.PI / 2];
  if (reach.kind === "line" || Math.abs(reach.t) >= radius) return contour;
  const crown = Math.asin(reach.t / radius);
  return [...contour, direction + crown, direction + Math.PI - crown];
}
