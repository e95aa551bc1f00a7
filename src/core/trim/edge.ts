// One edge of a cut piece: along a face between two places of the girth, or along an element.

import { type Vec2, unit } from "../geometry/vector";
import type { Pipe } from "../form/pipe";
import type { Cutter, FaceRef } from "../cut/cutter";
import { faceHeight, faceTangent } from "../cut/faceHeight";
import type { Owner } from "../cut/owner";
import { cutterAt } from "../cut/heightOn";

/**
 * An edge with the kept material on its left (θ to the right, z up, outside of the pipe). θ in radians within one turn
 * from the seam; to < from on an upper edge. Along an element face is null and from = to. z: heights in mm at both ends.
 */
export interface Edge {
  readonly from: number;
  readonly to: number;
  readonly face: FaceRef | null;
  readonly z: readonly [number, number];
  readonly owner: Owner;
}

/**
 * The point at u in [0, 1]: θ in radians, z in mm, exact at the ends. Along circles u is spaced so that the edge is
 * smooth in u through upright tangents at its ends: θ follows a half cosine wave.
 */
export function edgePoint(cutters: readonly Cutter[], edge: Edge, u: number): { theta: number; z: number } {
  const [z0, z1] = edge.z;
  if (u <= 0) return { theta: edge.from, z: z0 };
  if (u >= 1) return { theta: edge.to, z: z1 };
  if (!edge.face) return { theta: edge.from, z: z0 + u * (z1 - z0) };
  const cutter = cutterAt(cutters, edge.face);
  const theta = edge.from + (edge.to - edge.from) * (isRound(cutter, edge.face) ? (1 - Math.cos(Math.PI * u)) / 2 : u);
  return { theta, z: faceHeight(cutter, edge.face.face, theta) };
}

/** The unit tangent at u in the unrolled plane (x along growing θ, y up), in the direction of the edge. */
export function edgeTangent(pipe: Pipe, cutters: readonly Cutter[], edge: Edge, u: number): Vec2 {
  const [z0, z1] = edge.z;
  if (!edge.face) return { x: 0, y: Math.sign(z1 - z0) };
  const way = Math.sign(edge.to - edge.from);
  const { theta } = edgePoint(cutters, edge, u);
  const { x, y } = tangentAlong(pipe, cutters, edge.face, theta, (u < 0.5) === way > 0 ? 1 : -1);
  return { x: way * x, y: way * y };
}

/**
 * The unit tangent of a face's edge at θ, towards growing θ. `towards` tells on which side of θ the edge lies, which
 * matters only where two edges of one circle cross.
 */
export function tangentAlong(pipe: Pipe, cutters: readonly Cutter[], face: FaceRef, theta: number, towards: 1 | -1): Vec2 {
  const { ds, dz } = directionAlong(pipe, cutters, face, theta, towards);
  return unit(ds, dz);
}

/** The same, not of unit length: (ds along the pipe's girth, dz). A cut found on another surface is carried along its elements. */
export function directionAlong(pipe: Pipe, cutters: readonly Cutter[], face: FaceRef, theta: number, towards: 1 | -1): { ds: number; dz: number } {
  const cutter = cutterAt(cutters, face);
  const { ds, dz } = faceTangent(cutter, face.face, theta, towards);
  return { ds: ds * (pipe.radius / cutter.radius), dz };
}

/** Whether the edge is level: at one height all along. */
export function isLevel(cutters: readonly Cutter[], edge: Edge): boolean {
  if (!edge.face) return false;
  const cutter = cutterAt(cutters, edge.face);
  if (cutter.kind === "plane") return cutter.slope === 0;
  const reach = cutter.reaches[edge.face.face];
  return reach?.kind === "line" && reach.slope === 0;
}

function isRound(cutter: Cutter, face: FaceRef): boolean {
  return cutter.kind === "sweep" && cutter.reaches[face.face]?.kind === "arc";
}
