// The flat pattern: every loop of edges carried to the plane, girth across from the seam, height up, as lines and cubics.

import { mirroredChain } from "../geometry/mirrored";
import type { Segment } from "../geometry/segment";
import { type SmoothCurve, fitCubics } from "../geometry/fit";
import { pathArea } from "../geometry/path";
import type { Vec2 } from "../geometry/vector";
import type { Pipe } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import type { Owner } from "../cut/owner";
import { type Edge, edgePoint, edgeTangent, isLevel } from "../trim/edge";
import { heightOn } from "../cut/heightOn";
import type { Trimmed } from "../trim/trimmed";
import { type Proof, proofOf } from "./proof";
import { turningPlaces } from "./criticalPlaces";

/** A segment of the outline and the feature whose edge it is. */
export type PatternSegment = Segment & { readonly owner: Owner };

/** A closed loop; outlines run anticlockwise, openings clockwise. Each segment starts exactly where the one before ends. */
export interface Loop {
  readonly kind: "outline" | "opening";
  readonly segments: readonly PatternSegment[];
}

export interface Pattern {
  /** mm */
  readonly girth: number;
  /** Least and greatest height in mm of the outline ([0, 0] when nothing is left). */
  readonly height: readonly [number, number];
  readonly loops: readonly Loop[];
  readonly proof: Proof;
  /** Direction of the seam in radians. */
  readonly seam: number;
  /** 1: stations run with growing θ, anticlockwise seen from above, outside up. -1: clockwise, inside up. */
  readonly towards: 1 | -1;
}

/**
 * The pattern of a trimmed pipe whose spans begin at the seam. Between its corners each edge is within `tolerance`
 * (mm, > 0) of the true one; corners are exact.
 * @throws RangeError for a tolerance that is not positive.
 */
export function unrollPipe(pipe: Pipe, cutters: readonly Cutter[], trimmed: Trimmed, towards: 1 | -1, tolerance: number): Pattern {
  const seam = trimmed.spans[0]?.from ?? 0;
  const drawn = trimmed.loops.map((edges) => edges.map((edge) => ({ edge, segments: flatEdge(pipe, cutters, edge, seam, tolerance) })));
  const loops = drawn.map((edges): Loop => {
    const segments = edges.flatMap((edge) => edge.segments);
    const kind = pathArea(segments) >= 0 ? "outline" : "opening";
    return { kind, segments: towards > 0 ? segments : mirroredChain(segments, pipe.girth) };
  });
  const heights = trimmed.edges.flatMap((edge) => edgeHeights(cutters, edge));
  const height: [number, number] = heights.length > 0 ? [Math.min(...heights), Math.max(...heights)] : [0, 0];
  return { girth: pipe.girth, height, loops, seam, towards, proof: proofOf(pipe, cutters, trimmed, seam, drawn) };
}

/** One edge as segments in growing θ to the right: a line along an element or level, else fitted cubics. */
function flatEdge(pipe: Pipe, cutters: readonly Cutter[], edge: Edge, seam: number, tolerance: number): PatternSegment[] {
  const point = (u: number): Vec2 => {
    const { theta, z } = edgePoint(cutters, edge, u);
    return { x: pipe.radius * (theta - seam), y: z };
  };
  if (!edge.face || isLevel(cutters, edge)) return [{ kind: "line", from: point(0), to: point(1), owner: edge.owner }];
  const curve: SmoothCurve = { point, tangent: (u) => edgeTangent(pipe, cutters, edge, u) };
  return fitCubics(curve, tolerance).map((cubic) => ({ ...cubic, owner: edge.owner }));
}

/** The heights among which an edge's least and greatest are: its ends and its turning places. */
function edgeHeights(cutters: readonly Cutter[], edge: Edge): number[] {
  const { face } = edge;
  const turns = turningPlaces(cutters, edge);
  return [...edge.z, ...turns.map((theta) => (face ? heightOn(cutters, face, theta) : edge.z[0]))];
}
