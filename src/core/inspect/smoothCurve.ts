// The curve a drafter draws through the marked points: a cubic spline, closed round the girth, broken where a station
// stands on a corner or a jump of the edge.

import { type Spline, naturalSpline, periodicSpline, splineValue } from "../numeric/spline";
import type { Vec2 } from "../geometry/vector";
import type { Piece } from "../part/pipePiece";
import { tangentAlong } from "../trim/edge";
import type { Stretch } from "../trim/stretches";
import type { Station } from "../unroll/stations";

/** Splines over stretches of the girth; positions may run past the girth where a stretch crosses the seam. */
export interface SmoothEnd {
  readonly girth: number;
  readonly stretches: readonly Spline[];
}

/** Directions of the edge (radians) that differ by more than this make a corner, heights (mm) a jump. */
const CORNER = 1e-6;
const JUMP = 1e-6;
/** Parts a smooth curve is drawn in between two stations. */
const PARTS = 8;

/** The smooth curve through the stations of one end. */
export function smoothEnd(piece: Piece, stations: readonly Station[], end: "top" | "bottom"): SmoothEnd {
  const { girth } = piece.pattern;
  const marks = stations.filter(({ mark }) => mark !== "closing").map((station) => markOf(piece, station, end));
  const first = marks.findIndex(({ broken }) => broken);
  if (first < 0) {
    const at = [...marks.map(({ x }) => x), girth + (marks[0]?.x ?? 0)];
    const value = [...marks.map(({ after }) => after ?? 0), marks[0]?.after ?? 0];
    return { girth, stretches: [periodicSpline(at, value)] };
  }
  const turned = [...marks.slice(first), ...marks.slice(0, first + 1).map((mark) => ({ ...mark, x: mark.x + girth }))];
  return { girth, stretches: brokenStretches(turned) };
}

interface Mark {
  readonly x: number;
  /** Height just before and just after, null where nothing stands. */
  readonly before: number | null;
  readonly after: number | null;
  readonly broken: boolean;
}

function markOf(piece: Piece, station: Station, end: "top" | "bottom"): Mark {
  const [a, b] = [endOf(station.before, end), endOf(station.after, end)];
  const broken = !a || !b || Math.abs(a.z - b.z) > JUMP || Math.abs(lean(a.face, -1) - lean(b.face, 1)) > CORNER;
  return { x: station.girth, before: a?.z ?? null, after: b?.z ?? null, broken };

  /** Direction of the edge just before or after the station, in radians from level. */
  function lean(face: Stretch["toFace"], side: 1 | -1): number {
    const towards = (side * piece.pattern.towards) as 1 | -1;
    const { x, y } = tangentAlong(piece.form, piece.cutters, face, station.theta, towards);
    return Math.atan2(y, x);
  }
}

function endOf(stretches: readonly Stretch[], end: "top" | "bottom"): { z: number; face: Stretch["toFace"] } | null {
  const stretch = end === "top" ? stretches.at(-1) : stretches[0];
  if (!stretch) return null;
  return end === "top" ? { z: stretch.to, face: stretch.toFace } : { z: stretch.from, face: stretch.fromFace };
}

function brokenStretches(marks: readonly Mark[]): Spline[] {
  const stretches: Spline[] = [];
  let at: number[] = [];
  let value: number[] = [];
  marks.forEach(({ x, before, after, broken }) => {
    if (before !== null) {
      at.push(x);
      value.push(before);
    }
    if (!broken) return;
    if (at.length > 1) stretches.push(naturalSpline(at, value));
    at = after === null ? [] : [x];
    value = after === null ? [] : [after];
  });
  return stretches;
}

/** The smooth curve as chains of points in the pattern (mm), a few between every two stations, each chain in [0, girth]. */
export function smoothPoints({ girth, stretches }: SmoothEnd): Vec2[][] {
  return stretches.flatMap((spline) => {
    const xs = spline.at.slice(1).flatMap((to, i) => {
      const from = spline.at[i] ?? to;
      return Array.from({ length: PARTS }, (_, k) => from + ((to - from) * k) / PARTS);
    });
    const points = [...xs, spline.at.at(-1) ?? 0].map((x) => ({ x, y: splineValue(spline, x).value }));
    const inside = points.filter(({ x }) => x <= girth);
    const over = points.filter(({ x }) => x >= girth).map(({ x, y }) => ({ x: x - girth, y }));
    return [inside, over].filter((chain) => chain.length > 1);
  });
}
