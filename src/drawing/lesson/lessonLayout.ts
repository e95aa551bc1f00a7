// On which paper, at which scale and where does the drawing of a school sheet stand? Worked out from the key, the fullest of them, so
// that question, question begun and key stand alike.

import type { Piece, Vec2 } from "../../core/index";
import { type Box, boxesOverlap, growBox, moveBox } from "../box";
import { freeBox } from "../freeBox";
import { SCALES } from "../sheets/boardSection";
import { type Layout, layoutsFor } from "../sheets/layouts";
import { type LessonBoard, lessonBoards, movedBoard } from "./lessonBoard";
import { sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { type PlacedText, placedText } from "./lessonText";

/** The square of a code to be read by a camera, mm. */
const CODE = { width: 30, height: 30 };

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

/** Drawn larger than it is only a piece that comes out no wider than this, mm: pieces are drawn full size where they can be. */
const LARGE = 40;

/** Text on a page of its own is worth more than one step of the scale. */
const STEPS = 2;

/**
 * The drawing at the largest usual scale over the ways to lay the paper, or at the scale asked for; null when that does not fit. The
 * text stands beside it where that costs no more than one step of the scale.
 */
export function lessonLayout(lesson: LessonSheets, piece: Piece): LessonLayout | null {
  const { development, figures, words, views: { other }, setup } = lesson;
  const boardAt = lessonBoards(development, piece, { other, figures, words });
  const known = new Map<number, LessonBoard>();
  const boards = (scale: number) => {
    const made = known.get(scale) ?? boardAt(scale);
    known.set(scale, made);
    return made;
  };
  const layouts = layoutsFor(setup, { width: ROLL, height: ROLL });
  let alone: LessonLayout | null = null;
  let steps = 0;
  const usual = SCALES.filter((scale) => scale <= 1 || 2 * piece.form.cutRadius * scale <= LARGE);
  for (const scale of lesson.scale === null ? usual : [lesson.scale]) {
    const placed = layouts.flatMap((layout) => placedOn(lesson, layout, boards, scale, piece));
    const whole = placed.find(({ text }) => text !== null);
    if (whole) return whole;
    alone ??= placed[0] ?? null;
    if (alone && ++steps >= STEPS) break;
  }
  return alone;
}

/** As long as a sheet cut from a roll is made, mm. */
const ROLL = 600;

function placedOn(lesson: LessonSheets, layout: Layout, boards: (scale: number) => LessonBoard, scale: number, piece: Piece): LessonLayout[] {
  const { frame, corner } = sheetRoom(lesson, layout, scale);
  const inside = growBox(frame, -AIR);
  // Views and pattern at this scale take at least this much: no need to draw them.
  if (scale * Math.max(piece.form.cutRadius * 2, piece.pattern.girth) > Math.hypot(inside.right - inside.left, inside.top - inside.bottom)) return [];
  const drawn = boards(scale);
  return movesOf(drawn, inside, corner).flatMap((move): LessonLayout[] => {
    const board = movedBoard(drawn, move);
    const taken = [...boxesOf(board).map((box) => growBox(box, AIR / 2)), corner];
    const window = growBox(frame, -AIR / 2);
    const code = lesson.qr && freeBox(window, taken, CODE);
    if (lesson.qr && !code) return [];
    const square = code && { left: code.right - CODE.width, right: code.right, bottom: code.top - CODE.height, top: code.top };
    const all = square ? [...taken, square] : taken;
    const text = placedText(lesson.text, window, all);
    return [{ layout, scale, board, frame, text, code: square, taken: text ? [...all, text.taken] : all }];
  });
}

/** Ways to move a board into the frame clear of its title block: over it, beside it, or with a free corner of its own there. */
function movesOf(board: LessonBoard, inside: Box, corner: Box): Vec2[] {
  const { bounds } = board;
  const middle = (inside.left + inside.right - bounds.left - bounds.right) / 2, left = inside.left - bounds.left, top = inside.top - bounds.top;
  const over = (corner.top + AIR + inside.top - bounds.bottom - bounds.top) / 2, upright = (inside.bottom + inside.top - bounds.bottom - bounds.top) / 2;
  const moves = [{ x: middle, y: over }, { x: middle, y: upright }, { x: middle, y: top }, { x: left, y: upright }, { x: left, y: top }];
  return moves.filter((move) => {
    const box = moveBox(bounds, move);
    const within = box.left >= inside.left - 1e-6 && box.right <= inside.right + 1e-6 && box.bottom >= inside.bottom - 1e-6 && box.top <= inside.top + 1e-6;
    return within && !boxesOf(board).some((one) => boxesOverlap(growBox(moveBox(one, move), AIR), corner));
  });
}

/** What the blocks take, and the corner over which points are carried from the circle to the third view. */
function boxesOf({ blocks: { front, top, side, pattern }, shown }: LessonBoard): Box[] {
  const drawn = [...shown].map((name) => ({ front, top, side })[name].bounds);
  const carried: Box[] = shown.size === 3 ? [{ left: side.bounds.left, right: side.bounds.right, bottom: top.bounds.bottom, top: top.bounds.top }] : [];
  return [...drawn, pattern.bounds, ...carried];
}
