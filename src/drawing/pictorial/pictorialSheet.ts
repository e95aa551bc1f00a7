// What of a piece does a pictorial view show, whichever way it is turned and however far it is rolled up? The pattern's loops
// and edges as fine chains of points, and its elements; worked out once a piece.

import { type Piece, type Segment, type Vec2, flattenSegments } from "../../core/index";
import { boxOfPoints } from "../box";
import { unionOf } from "../view/contour";
import type { Ref } from "../display";
import { patternEdges, patternLoops } from "../pattern/patternOutline";
import { isometric, pictured, sightAxes } from "./pictorialSight";
import type { Place } from "../place";

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
  /** mm: what the isometric view takes at most while the sheet is rolled up. */
  readonly room: { readonly width: number; readonly height: number };
}

/** Chords of the pipe's circle a turn: on a pipe drawn 200 mm wide they stay within 0.03 mm of it. */
const CHORDS = 128;

/** Greatest distance of the chains from the pattern, as a part of the girth. */
const TOLERANCE = 2e-5;

/** Parts of the way at which the room is measured. */
const MEASURED = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

const AS_IT_IS: Place = { origin: { x: 0, y: 0 }, scale: 1, turn: 0 };

/** The chains of a piece; none has a step along the girth longer than a chord. `projection` says which isometric view is meant. */
export function pictorialSheet(piece: Piece, projection: "first" | "third"): PictorialSheet {
  const { girth } = piece.form;
  const chain = (segments: readonly Segment[]) => stepped(flattenSegments(segments, TOLERANCE * girth), girth / CHORDS);
  const loops = patternLoops(piece.pattern.loops, AS_IT_IS).map(({ segments }) => chain(segments).slice(0, -1));
  return {
    piece, loops, room: roomFor(piece, projection, loops.flat()),
    edges: patternEdges(piece.pattern.loops, AS_IT_IS).map(({ segments, ref }) => ({ points: chain(segments), ref: ref ?? { clause: "part" } })),
    elements: piece.stations.map(({ girth: at, mark, label, before, after }, station) => ({
      station, girth: at, kept: unionOf([...before, ...after]), division: mark === "even" ? Number(label) : null,
    })),
  };
}

function roomFor(piece: Piece, projection: "first" | "third", points: readonly Vec2[]): PictorialSheet["room"] {
  const boxes = MEASURED.map((fraction) => {
    const axes = sightAxes(piece, isometric(projection), fraction);
    return boxOfPoints(points.map((point) => pictured(piece, axes, point, fraction)));
  });
  return { width: Math.max(...boxes.map(({ left, right }) => right - left)), height: Math.max(...boxes.map(({ bottom, top }) => top - bottom)) };
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
