// Where does the drawing lie on a sheet whose own points were marked? Its base line tells: its start is the origin, and it runs along x.

import { type Vec2, distance } from "../../geometry/vector";
import type { MarkedPoint } from "./markedPoint";
import { type PictureSize, paperPoint, rectification } from "./rectification";
import type { Problem } from "../../job/problem";

export type Framed =
  | { readonly ok: true; readonly points: readonly MarkedPoint[]; /** mm on the paper from start to end of the base line. */ readonly length: number }
  | { readonly ok: false; readonly problem: Problem };

/** mm: a base line shorter than this gives no direction. */
const SHORTEST = 10;

/**
 * Marked points of a sheet, with the base line of the drawing marked in the same picture from `start` to `end` (pixels): the points as
 * places from the start of the base line. Refused like `rectification`, and where both ends of the base line are one.
 */
export function inDrawingFrame(points: readonly MarkedPoint[], size: PictureSize, start: Vec2, end: Vec2): Framed {
  const sheet = rectification(points, size, points.map(({ paper }) => paper));
  if (!sheet.ok) return sheet;
  const [from, to] = [paperPoint(sheet.rectification, start), paperPoint(sheet.rectification, end)];
  if (!from || !to) return { ok: false, problem: { code: "points-crossed", field: "points" } };
  const length = distance(from, to);
  if (!(length >= SHORTEST)) return { ok: false, problem: { code: "base-too-short", field: "base", min: SHORTEST } };
  const [c, s] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const moved = ({ x, y }: Vec2): Vec2 => ({ x: c * (x - from.x) + s * (y - from.y), y: c * (y - from.y) - s * (x - from.x) });
  return { ok: true, length, points: points.map(({ picture, paper }) => ({ picture, paper: moved(paper) })) };
}
