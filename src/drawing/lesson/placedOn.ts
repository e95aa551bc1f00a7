// Where does the drawing of a school sheet stand on one paper at one scale, with its text and its code for a camera?

import type { Piece } from "../../core/index";
import { type Box, boxesOverlap, growBox } from "../box";
import { freeBox } from "../freeBox";
import { LETTERING } from "../lettering";
import { clearMoves } from "../sheets/clearMoves";
import type { Layout } from "../sheets/layouts";
import { evenStations } from "./evenStations";
import { type LessonBoard, movedBoard } from "./lessonBoard";
import { sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { type PlacedText, placedText } from "./lessonText";
import { codeSide } from "./qrItems";

/** Air round the drawing, mm. */
const AIR = 4;

export interface LessonLayout {
  readonly layout: Layout;
  readonly scale: number;
  readonly board: LessonBoard;
  /** Inside the bands. */
  readonly frame: Box;
  /** Null: there is no room for it here, it takes a page of its own. */
  readonly text: PlacedText | null;
  /** Where the code to be read by a camera stands; null without one. */
  readonly code: Box | null;
  /** What is taken: views, pattern, title block, text. */
  readonly taken: readonly Box[];
}

/** The ways in which drawing and code find room there, best first. */
export function placedOn(lesson: LessonSheets, layout: Layout, boards: (scale: number) => LessonBoard, scale: number, piece: Piece): LessonLayout[] {
  const { frame, corner } = sheetRoom(lesson, layout, scale);
  const inside = growBox(frame, -AIR);
  // Views and pattern at this scale take at least this much: no need to draw them.
  if (scale * Math.max(piece.form.cutRadius * 2, piece.pattern.girth) > Math.hypot(inside.right - inside.left, inside.top - inside.bottom)) return [];
  const drawn = boards(scale);
  const window = growBox(frame, -AIR / 2);
  const found = clearMoves(boxesOf(drawn), drawn.bounds, inside, corner, AIR).flatMap((move): LessonLayout[] => {
    const board = movedBoard(drawn, move);
    const taken = [...boxesOf(board).map((box) => growBox(box, AIR / 2)), corner];
    return besides(lesson, window, taken).map(({ text, code }) => ({
      layout, scale, board, frame, text, code, taken: [...taken, ...(code ? [code] : []), ...(text ? [text.taken] : [])],
    }));
  });
  const close = (piece.pattern.girth * scale) / Math.max(1, evenStations(piece)) < CLOSE * LETTERING;
  return found.sort((a, b) => misfit(a, close) - misfit(b, close));
}

/** Lines of this length, mm, read best. */
const READ = 120;

/** Elements nearer than this on paper, lettering heights, have some of their figures over their ends, as far as that, mm. */
const CLOSE = 1.2, OVER = 20;

/** A place without room over the pattern is as bad as text so much too narrow, mm; one without room for the text is worse than any. */
const COVERED = 80, WITHOUT = 1000;

/** How far a place is from the best. */
function misfit(placed: LessonLayout, close: boolean): number {
  const { text } = placed;
  return (text ? Math.abs(text.taken.right - text.taken.left - READ) : WITHOUT) + (close && isCovered(placed) ? COVERED : 0);
}

/** Whether something stands where figures of the pattern would be. */
function isCovered({ board: { blocks: { pattern: { bounds, place } } }, frame, taken }: LessonLayout): boolean {
  const over = place.turn === 0 ? { ...bounds, bottom: bounds.top - 1, top: bounds.top + OVER } : { ...bounds, left: bounds.right - 1, right: bounds.right + OVER };
  return over.top > frame.top || over.right > frame.right || taken.some((box) => !boxesOverlap(growBox(bounds, -AIR), box) && boxesOverlap(over, box));
}

/** Text and code in what is free: the code first, or the text first. */
function besides({ text: paragraphs, qr }: LessonSheets, window: Box, taken: readonly Box[]): { text: PlacedText | null; code: Box | null }[] {
  if (!qr) return [{ text: placedText(paragraphs, window, taken), code: null }];
  const code = codeIn(window, taken, codeSide(qr));
  if (!code) return [];
  const after = placedText(paragraphs, window, [...taken, code]);
  const before = after ? null : placedText(paragraphs, window, taken);
  const left = before && codeIn(window, [...taken, before.taken], codeSide(qr));
  return [{ text: after, code }, ...(before && left ? [{ text: before, code: left }] : [])];
}

/** A square in the upper right corner of the largest free box that takes it. */
function codeIn(window: Box, taken: readonly Box[], side: number): Box | null {
  const free = freeBox(window, taken, { width: side, height: side });
  return free && { left: free.right - side, right: free.right, bottom: free.top - side, top: free.top };
}

/** What the blocks take, and the corner over which points are carried from the circle to the third view, as far as the lines run. */
function boxesOf({ blocks: { front, top, side, pattern }, shown }: LessonBoard): Box[] {
  const drawn = [...shown].map((name) => ({ front, top, side })[name].bounds);
  const [a, b] = [side.bounds, top.bounds];
  const carried: Box[] = shown.size === 3 ? [{ ...a, bottom: Math.min(a.bottom, b.bottom), top: Math.max(a.top, b.top) }, { ...b, right: Math.max(a.right, b.right) }] : [];
  return [...drawn, pattern.bounds, ...carried];
}
