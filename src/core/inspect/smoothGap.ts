// Between which two points does the smooth curve stray farthest from the true edge?

import { type Cubic, cubicSlope, segmentPoint } from "../geometry/segment";
import { type Vec2, distance } from "../geometry/vector";
import type { Piece } from "../part/pipePiece";
import type { Adequacy } from "./adequacy";
import { smoothCubics } from "./smoothCubics";

export interface SmoothGap {
  /** The farthest point of the true edge, and the point of the smooth curve nearest to it; pattern coordinates, mm. */
  readonly edge: Vec2;
  readonly curve: Vec2;
}

/** Places on each cubic where the search for the nearest point begins. */
const STARTS = 8;

/** The greatest gap of one end, found by `adequacy` for the same piece and end; null when no curve can be drawn. */
export function smoothGap(piece: Piece, end: "top" | "bottom", { at }: Pick<Adequacy, "at">): SmoothGap | null {
  const edge: Vec2 = { x: at.girth, y: at.z };
  let curve: Vec2 | null = null;
  for (const cubic of smoothCubics(piece, end).flat()) {
    const point = nearestOn(cubic, edge);
    if (!curve || distance(point, edge) < distance(curve, edge)) curve = point;
  }
  return curve && { edge, curve };
}

/** The nearest of the starts, bettered by halving the part of the cubic round it; a cubic of the curve is a graph and bends once. */
function nearestOn(cubic: Cubic, point: Vec2): Vec2 {
  const starts = Array.from({ length: STARTS + 1 }, (_, i) => i / STARTS);
  const away = (u: number) => distance(segmentPoint(cubic, u), point);
  const best = starts.reduce((least, u) => (away(u) < away(least) ? u : least), 0);
  let low = Math.max(0, best - 1 / STARTS), high = Math.min(1, best + 1 / STARTS);
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    const at = segmentPoint(cubic, middle), slope = cubicSlope(cubic, middle);
    const ahead = (point.x - at.x) * slope.x + (point.y - at.y) * slope.y > 0;
    if (ahead) low = middle;
    else high = middle;
  }
  return segmentPoint(cubic, (low + high) / 2);
}
