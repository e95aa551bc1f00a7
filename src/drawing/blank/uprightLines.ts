// Quarter lines and station ticks: thin upright lines, none along another line.

import type { FabricatedPiece, Line, Mark, Segment } from "../../core/index";
import type { PathItem } from "../display";
import { stroke } from "../strokes";

/** Length of a tick, mm. */
export const TICK = 3;

/** Nearer than this, mm, two upright lines are one. */
const SAME = 1e-3;

type Tick = Extract<Mark, { kind: "tick" }>;

/** The quarter lines that do not run along an edge or the seam. */
export function quarterItems({ marks, ...piece }: FabricatedPiece): PathItem[] {
  const drawn = uprightOf({ marks, ...piece }, false);
  return marks.flatMap((mark) => {
    if (mark.kind !== "quarter" || drawn.some((line) => covers(line, mark.line))) return [];
    return [stroke("quarter line", mark.line.from, mark.line.to)];
  });
}

/** The ticks that do not run along an edge, the seam or a quarter line; shorter where the sheet is narrow, so that the two of a station do not meet. */
export function tickItems(piece: FabricatedPiece): PathItem[] {
  const drawn = uprightOf(piece, true);
  const ticks = piece.marks.filter((mark): mark is Tick => mark.kind === "tick");
  const alike = new Map<string, Tick[]>();
  for (const tick of ticks) alike.set(tick.label, [...(alike.get(tick.label) ?? []), tick]);
  return ticks.flatMap((tick) => {
    const facing = (alike.get(tick.label) ?? []).find(({ end, at }) => end !== tick.end && Math.abs(at.x - tick.at.x) < SAME);
    const line = tickLine(tick, Math.min(TICK, facing ? Math.abs(facing.at.y - tick.at.y) / 3 : TICK));
    return drawn.some((other) => covers(other, line)) ? [] : [stroke("station tick", line.from, line.to)];
  });
}

function tickLine({ at, into }: Tick, length: number): Line {
  return { kind: "line", from: at, to: { x: at.x + length * into.x, y: at.y + length * into.y } };
}

/** The upright lines of edges, bend and seam lines, with the quarter lines if wanted. */
function uprightOf({ contours, marks }: FabricatedPiece, quarters: boolean): Line[] {
  const segments: Segment[] = contours.flatMap((contour) => contour.segments);
  for (const mark of marks) {
    if (mark.kind === "fold" || mark.kind === "seam") segments.push(...mark.path);
    if (mark.kind === "quarter" && quarters) segments.push(mark.line);
  }
  return segments.filter((segment): segment is Line => segment.kind === "line" && Math.abs(segment.to.x - segment.from.x) < SAME);
}

/** Whether two upright lines share more than a point. */
function covers(one: Line, other: Line): boolean {
  if (Math.abs(one.from.x - other.from.x) > SAME) return false;
  const [low, high] = [Math.min(one.from.y, one.to.y), Math.max(one.from.y, one.to.y)];
  return Math.min(other.from.y, other.to.y) < high - SAME && Math.max(other.from.y, other.to.y) > low + SAME;
}
