// Which elements does a careful drafter add? Those through the corners of the edges and through their highest and
// lowest places.

import { TURN, angleBetween } from "../numeric/angle";
import { cleanAngle } from "../numeric/cleanAngle";
import { ANGLE_NOISE } from "../numeric/tolerance";
import type { Cutter } from "../cut/cutter";
import { turningAngles } from "../cut/turningAngles";
import type { Edge } from "../trim/edge";
import { cutterAt } from "../cut/heightOn";

/** θ (radians, [0, 2π)) of all corners and turning places of the edges, repeats included; the seam's own are left out. */
export function criticalPlaces(cutters: readonly Cutter[], edges: readonly Edge[], seam: number): number[] {
  const corners = edges.flatMap(({ owner, from, to }) => (owner.kind === "seam" ? [] : [from, to]));
  const turns = edges.flatMap((edge) => turningPlaces(cutters, edge));
  return [...corners, ...turns].map(cleanAngle).filter((theta) => angleBetween(theta, seam) > ANGLE_NOISE);
}

/** θ (radians, between the ends of the edge) where an edge is highest or lowest within its course. */
export function turningPlaces(cutters: readonly Cutter[], { face, from, to }: Edge): number[] {
  if (!face) return [];
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  return turningAngles(cutterAt(cutters, face), face.face).flatMap((angle) => {
    const place = angle + TURN * Math.ceil((low - angle) / TURN);
    return place <= high ? [place] : [];
  });
}
