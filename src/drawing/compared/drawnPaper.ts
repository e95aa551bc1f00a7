// How does the paper of a hand-drawn development lie on the board's pattern? Its base line starts at the student's station 0; where that
// is not the seam of the pattern, the paper is cut there, and where it is numbered the other way it is turned over.

import { girthAt, type Piece, type Readings, type Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import { onSheet } from "../place";

/** The numbering of the drawing. */
export type Numbering = Pick<Readings, "scale" | "count" | "start" | "towards">;

/** A stretch of the paper that lies on the board in one piece. */
export interface PaperPart {
  /** mm along the base line of the drawing. */
  readonly from: number;
  readonly to: number;
  /** Sheet place of the paper's origin, and the sheet mm of one mm along its base line and up from it. */
  readonly origin: Vec2;
  readonly across: Vec2;
  readonly up: Vec2;
}

/** Part of the girth below which a start is at the seam. */
const AT_SEAM = 1e-6;

/** mm on the paper from the start of the base line to a place of the numbering. */
export function alongPaper(piece: Piece, { scale, count }: Numbering, at: number): number {
  return (piece.pattern.girth * scale * at) / count;
}

/** The parts of the paper from left to right: one, or two where it is cut at the seam. */
export function drawnPaper(board: Board, piece: Piece, { scale, start, towards }: Numbering): PaperPart[] {
  const { girth, towards: runs } = piece.pattern;
  const way = towards * runs;
  const found = girthAt(piece.pattern, piece.form.radius, start);
  const begun = found < AT_SEAM * girth || found > (1 - AT_SEAM) * girth ? (way > 0 ? 0 : girth) : found;
  const whole = girth * scale;
  const seam = (way > 0 ? girth - begun : begun) * scale;
  const part = (from: number, to: number, first: number): PaperPart => {
    const at = (x: number, y: number) => onSheet(board.blocks.pattern.place, { x: first + (way * x) / scale, y: y / scale });
    const [origin, right, above] = [at(0, 0), at(1, 0), at(0, 1)];
    return { from, to, origin, across: { x: right.x - origin.x, y: right.y - origin.y }, up: { x: above.x - origin.x, y: above.y - origin.y } };
  };
  return whole - seam < AT_SEAM * whole ? [part(0, whole, begun)] : [part(0, seam, begun), part(seam, whole, begun - way * girth)];
}

/** The sheet place of a point of the paper, on the part nearest to it. */
export function onDrawnPaper(parts: readonly PaperPart[], { x, y }: Vec2): Vec2 {
  const part = parts.find(({ to }) => x <= to) ?? parts.at(-1);
  if (!part) throw new RangeError("a paper without parts");
  const { origin, across, up } = part;
  return { x: origin.x + x * across.x + y * up.x, y: origin.y + x * across.y + y * up.y };
}

/** The point of the paper (mm) under a point of the sheet, on the part it lies over or nearest to. */
export function underOnPaper(parts: readonly PaperPart[], point: Vec2): Vec2 {
  const along = (axis: Vec2, origin: Vec2) => ((point.x - origin.x) * axis.x + (point.y - origin.y) * axis.y) / (axis.x ** 2 + axis.y ** 2);
  const all = parts.map(({ from, to, origin, across, up }) => {
    const x = along(across, origin);
    return { x, y: along(up, origin), off: Math.max(from - x, x - to, 0) };
  });
  const [nearest] = all.sort((a, b) => a.off - b.off);
  if (!nearest) throw new RangeError("a paper without parts");
  return { x: nearest.x, y: nearest.y };
}
