// The measured proof of a pattern: what the drawn outline measures in the plane against the surface in space.

import { integrate } from "../numeric/quadrature";
import { pathArea, pathLength } from "../geometry/path";
import { type Segment, segmentPoint } from "../geometry/segment";
import { distance } from "../geometry/vector";
import type { Pipe } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import { type Edge, tangentAlong } from "../trim/edge";
import { heightOn } from "../cut/heightOn";
import type { Trimmed } from "../trim/trimmed";

export interface Proof {
  /** mm²: enclosed by the drawn outline; and of the surface, by integration over its elements. */
  readonly areaFlat: number;
  readonly areaSurface: number;
  /** mm: all edges but the seam, as drawn; and in space, by integration along the true edges. */
  readonly edgeLengthFlat: number;
  readonly edgeLengthSurface: number;
  /** mm: girth of the pattern, and the circumference of a circle of the developed diameter. */
  readonly girth: number;
  readonly girthExact: number;
  /** mm: greatest gap between the end of a segment and the start of the next. */
  readonly closingError: number;
  /** mm: greatest distance of the drawn outline, rolled back up, from the true edge: along its own element, times the cosine of the edge's slope. */
  readonly rollBackError: number;
}

/** An edge and the segments drawn for it, before any mirroring. */
export interface DrawnEdge {
  readonly edge: Edge;
  readonly segments: readonly Segment[];
}

/** A cosine this small has lost its digits: at an upright tangent the speed is taken a little further inwards, where it is the same. */
const UPRIGHT = 1e-5;
const INWARDS = 1e-3;

/** Where each segment is rolled back; shares of u. */
const ROLL_BACK_PROBES = [0.2, 0.4, 0.6, 0.8];

/** The proof of the drawn loops of a piece whose seam stands at θ = `seam`. */
export function proofOf(
  pipe: Pipe, cutters: readonly Cutter[], trimmed: Trimmed, seam: number, loops: readonly (readonly DrawnEdge[])[],
): Proof {
  const drawn = loops.flat();
  const free = drawn.filter(({ edge }) => edge.owner.kind !== "seam");
  return {
    areaFlat: loops.reduce((sum, loop) => sum + pathArea(loop.flatMap(({ segments }) => segments)), 0),
    areaSurface: trimmed.area,
    edgeLengthFlat: free.reduce((sum, { segments }) => sum + pathLength(segments), 0),
    edgeLengthSurface: free.reduce((sum, { edge }) => sum + edgeLength(pipe, cutters, edge), 0),
    girth: pipe.girth,
    girthExact: Math.PI * pipe.developed,
    closingError: Math.max(0, ...loops.map((loop) => closingError(loop.flatMap(({ segments }) => segments)))),
    rollBackError: Math.max(0, ...drawn.map((edge) => rollBackError(pipe, cutters, seam, edge))),
  };
}

/** Length in mm of an edge in space, by integrating along the true edge: dl = r dθ / cos(its slope). */
function edgeLength(pipe: Pipe, cutters: readonly Cutter[], edge: Edge): number {
  const { face } = edge;
  if (!face) return Math.abs(edge.z[1] - edge.z[0]);
  const turn = Math.abs(edge.to - edge.from);
  const cosineAt = (wave: number): number =>
    tangentAlong(pipe, cutters, face, edge.from + ((edge.to - edge.from) * (1 - Math.cos(wave))) / 2, 1).x;
  const speed = (wave: number): number => {
    const cosine = cosineAt(wave);
    if (cosine > UPRIGHT) return (pipe.radius * turn * Math.sin(wave)) / 2 / cosine;
    const inside = wave + (wave < Math.PI / 2 ? INWARDS : -INWARDS);
    return (pipe.radius * turn * Math.sin(inside)) / 2 / Math.max(cosineAt(inside), UPRIGHT);
  };
  return integrate(speed, 0, Math.PI, (pipe.radius * turn + Math.abs(edge.z[1] - edge.z[0])) * 1e-9);
}

function closingError(segments: readonly Segment[]): number {
  return segments.reduce((most, { from }, i) => Math.max(most, distance(segments.at(i - 1)?.to ?? from, from)), 0);
}

function rollBackError(pipe: Pipe, cutters: readonly Cutter[], seam: number, { edge, segments }: DrawnEdge): number {
  const { face } = edge;
  if (!face) return 0;
  return segments.reduce((most, segment) => ROLL_BACK_PROBES.reduce((worst, u) => {
    const { x, y } = segmentPoint(segment, u);
    const theta = seam + x / pipe.radius;
    const off = Math.abs(y - heightOn(cutters, face, theta)) * tangentAlong(pipe, cutters, face, theta, 1).x;
    return Math.max(worst, off);
  }, most), 0);
}
