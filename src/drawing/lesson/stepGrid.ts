// How large are pictures of the construction on a paper, so many beside and under one another, their words over or beside them?

import { type Board, board } from "../board/board";
import { isMeasure } from "../board/isMeasure";
import { boundsOf } from "../bounds";
import { type Box, joinBoxes } from "../box";
import { LETTERING } from "../lettering";
import type { Layout } from "../sheets/layouts";
import { type Step, steps } from "../steps/steps";
import { capital } from "../tradeWords";
import { sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { linesOf } from "./lessonText";

/** Air inside a cell, mm; and what a board may be too large for it by. */
export const AIR = 3;
const CLOSE = 0.5;

/** Without dimensions the circle takes a few numbers across, lettering heights. */
const CIRCLE = 3;

/** How often a drawing is drawn smaller so that its construction has room too. */
const TRIES = 3;

/** Width of words beside a picture, mm. */
const COLUMN = 44;

/** What is said of each picture. */
interface Words {
  /** What is done and why, or only what is new. */
  readonly whole: boolean;
  readonly place: "over" | "beside";
  readonly width: number;
  /** Height of the longest, mm. */
  readonly height: number;
}

export interface Grid {
  readonly layout: Layout;
  readonly cells: readonly Box[];
  readonly board: Board;
  readonly order: readonly Step[];
  /** Of everything drawn at any step. */
  readonly bounds: Box;
  readonly words: Words;
}

/** The pictures on one paper, none when they do not fit their cells. */
export function gridOn(lesson: LessonSheets, layout: Layout, [columns, rows]: readonly [number, number], { whole, place }: Pick<Words, "whole" | "place">, bare: boolean, said: readonly Step[]): Grid[] {
  const { frame, corner } = sheetRoom(lesson, layout, null);
  const room = { ...frame, bottom: corner.top };
  const cell = { width: (room.right - room.left) / columns, height: (room.top - room.bottom) / rows };
  const inside = { width: cell.width - 2 * AIR, height: cell.height - 2 * AIR };
  const width = place === "over" ? inside.width : COLUMN;
  const height = Math.max(...said.map((step, i) => linesOf(wordsOf(step, i, whole), width).at(-1)?.down ?? 0));
  const words = { whole, place, width, height };
  const { left, right, bottom, top } = pictureRoom({ left: 0, right: inside.width, bottom: 0, top: inside.height }, words);
  if (height > inside.height) return [];
  const drawn = fitted(lesson, { width: right - left, height: top - bottom }, bare);
  if (!drawn) return [];
  const cells = Array.from({ length: columns * rows }, (_, at): Box => {
    const from = { x: room.left + (at % columns) * cell.width, y: room.top - Math.floor(at / columns) * cell.height };
    return { left: from.x, right: from.x + cell.width, top: from.y, bottom: from.y - cell.height };
  });
  return [{ layout, cells, ...drawn, words }];
}

/** What the words leave of the inside of a cell. */
export function pictureRoom(inside: Box, { place, width, height }: Words): Box {
  return place === "over" ? { ...inside, top: inside.top - height } : { ...inside, left: inside.left + width + AIR };
}

/** The drawing with its construction within a room; null where it would be too small to read. */
function fitted(lesson: LessonSheets, room: { readonly width: number; readonly height: number }, bare: boolean): ReturnType<typeof drawnIn> | null {
  const least = leastScale(lesson);
  let window = room;
  for (let i = 0; i < TRIES && window.width > 0 && window.height > 0; i++) {
    const drawn = drawnIn(lesson, window, bare);
    const { bounds, board: { scale } } = drawn;
    const over = { width: bounds.right - bounds.left - room.width, height: bounds.top - bounds.bottom - room.height };
    if (!(scale > least * 0.99)) return null;
    if (over.width <= CLOSE && over.height <= CLOSE) return drawn;
    window = { width: window.width - Math.max(0, over.width), height: window.height - Math.max(0, over.height) };
  }
  return null;
}

/** The drawing in a window, its steps, and what all of them take. */
export function drawnIn({ development, figures, words, way }: LessonSheets, window: { width: number; height: number }, bare: boolean): Pick<Grid, "board" | "order" | "bounds"> {
  const drawn = board(development, { ...window, figures, words: words.sheet, ...(bare && { only: { keeps: (item) => !isMeasure(item), leastScale: leastScale({ development }) } }) });
  const order = steps(drawn, development, { way, figures, words: words.step });
  const construction = order.flatMap((step) => [...step.construction, ...step.parts.flatMap((part) => part.construction)]);
  return { board: drawn, order, bounds: joinBoxes(drawn.bounds, boundsOf(construction)) };
}

function leastScale({ development: { pieces } }: Pick<LessonSheets, "development">): number {
  return (CIRCLE * LETTERING) / (2 * (pieces[0]?.form.cutRadius ?? Infinity));
}

/** Its name, and what is done and why or only what is new. */
export function wordsOf({ title, fresh, text }: Step, index: number, whole: boolean): string[] {
  return [`${index + 1}. ${title}`, whole ? text : capital(fresh)];
}
