// What of a piece does a pictorial view show, whichever way it is turned and however far it is rolled up? The pattern's loops
// and edges as fine chains of points, and its elements; worked out once a piece.

import { type Piece, type Vec2, flattenSegments, TURN } from "../core/index";
import { unionOf } from "./contour";
import type { Ref } from "./display";
import { patternEdges, patternLoops } from "./patternOutline";
import type { Place } from "./place";

/** An element at a station. */
export interface PictorialElement {
  /** Index into the stations of the piece. */
  readonly station: number;
  /** Which of the even divisions it is; null for an extra station. */
  readonly division: number | null;
  /** mm from the seam. */
  readonly girth: number;
  /** Kept heights, mm. */
  readonly kept: readonly { readonly from: number; readonly to: number }[];
}

/** Chains in the plane of the pattern, mm. */
export interface PictorialSheet {
  readonly piece: Piece;
  /** Closed: outlines and openings, the last point not repeated. */
  readonly loops: readonly (readonly Vec2[])[];
  /** The same in open chains of one feature each. */
  readonly edges: readonly { readonly points: readonly Vec2[]; readonly ref: Ref }[];
  readonly elements: readonly PictorialElement[];
}

/** Chords of the pipe's circle a turn: on a pipe drawn 200 mm wide they stay within 0.03 mm of it. */
const CHORDS = 128;

/** Greatest distance of the chains from the pattern, as a part of the girth. */
const TOLERANCE = 1e-4;

const AS_IT_IS: Place = { origin: { x: 0, y: 0 }, scale: 1, turn: 0 };

/** The chains of a piece; none has a step along the girth longer than a chord. */
export function pictorialSheet(piece: Piece): PictorialSheet {
  const { girth } = piece.form;
  const chain = (item: { segments: Parameters<typeof flattenSegments>[0] }) => stepped(flattenSegments(item.segments, TOLERANCE * girth), girth / CHORDS);
  return {
    piece,
    loops: patternLoops(piece, AS_IT_IS).map((loop) => chain(loop).slice(0, -1)),
    edges: patternEdges(piece, AS_IT_IS).map((edge) => ({ points: chain(edge), ref: edge.ref ?? { clause: "part" } })),
    elements: piece.stations.map(({ girth: at, mark, label, before, after }, station) => ({
      station, girth: at, kept: unionOf([...before, ...after]), division: mark === "even" ? Number(label) : null,
    })),
  };
}

/** Points put in where a step goes farther than `most` along the girth. */
function stepped(points: readonly Vec2[], most: number): Vec2[] {
  return points.flatMap((to, i) => {
    const from = points[i - 1];
    if (!from) return [to];
    const parts = Math.max(1, Math.ceil(Math.abs(to.x - from.x) / most - 1e-9));
    return Array.from({ length: parts }, (_, k) => {
      const u = (k + 1) / parts;
      return u === 1 ? to : { x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) };
    });
  });
}

/**
 * By how much (radians, anticlockwise seen from above) the rolled sheet is turned about the pipe's axis, at the end of the
 * rolling, to stand as the piece stands in the views: within half a turn either way.
 */
export function turnToViews({ pattern: { seam, towards } }: Piece): number {
  const turn = towards < 0 ? seam : seam - Math.PI;
  return turn - TURN * Math.round(turn / TURN);
}
