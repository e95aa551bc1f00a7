// The construction as pictures, so many to a page: each step as far as it has come, what is new in full lines over the faint rest, with
// its name and what is done.

import { type Board, board } from "../board/board";
import { type Box, growBox } from "../box";
import { clearedFigures } from "../dimension/clearedFigures";
import type { Item } from "../display";
import { LETTERING } from "../lettering";
import { moveItem } from "../moveItem";
import { type Layout, layoutsFor } from "../sheets/layouts";
import { drawnAt } from "../steps/drawnAt";
import { type Step, steps } from "../steps/steps";
import { stroke } from "../strokes";
import { capital } from "../tradeWords";
import { type SheetBody, sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { lettered, linesOf } from "./lessonText";

/** Columns by rows for so many to a page, tried in turn. */
const GRIDS: Readonly<Record<number, readonly (readonly [number, number])[]>> = { 6: [[3, 2], [2, 3]], 4: [[2, 2]], 2: [[2, 1], [1, 2]], 1: [[1, 1]] };

/** Fewer to a page are drawn where figures of the usual height would smother so many. */
const COUNTS = [6, 4, 2, 1];

/** Air inside a cell, mm; and what a board may be too large for it by. */
const AIR = 3, CLOSE = 0.5;

/** As long as a sheet cut from a roll is made, mm. */
const ROLL = 600;

/** So many to a page have room for a name and what is new, fewer for what is done and why. */
const MANY = 4;

interface Grid {
  readonly layout: Layout;
  readonly cells: readonly Box[];
  readonly board: Board;
  /** Height of the words over a picture, mm. */
  readonly words: number;
}

/** Pages of pictures; null on paper too small for a single one. */
export function stepPages(lesson: LessonSheets): { readonly layout: Layout; readonly bodies: readonly SheetBody[] } | null {
  const { development, figures, words } = lesson;
  const layouts = layoutsFor(lesson.setup, { width: ROLL, height: ROLL });
  const said = stepsOn(lesson, board(development, { ...ANY, figures, words: words.sheet }));
  for (const count of COUNTS.filter((one) => one <= lesson.stepsPerPage)) {
    const grids = layouts.flatMap((layout) => (GRIDS[count] ?? []).flatMap((shape) => gridOn(lesson, layout, shape, said)));
    const [best] = grids.sort((a, b) => b.board.scale - a.board.scale);
    if (best) return { layout: best.layout, bodies: bodiesOf(best, stepsOn(lesson, best.board)) };
  }
  return null;
}

/** A window to draw in while only the words are wanted, mm. */
const ANY = { width: 300, height: 200 };

function stepsOn({ development, way, figures, words }: LessonSheets, drawn: Board): Step[] {
  return steps(drawn, development, { way, figures, words: words.step });
}

/** The pictures on one paper, none when they do not fit their cells. */
function gridOn(lesson: LessonSheets, layout: Layout, [columns, rows]: readonly [number, number], said: readonly Step[]): Grid[] {
  const { frame, corner } = sheetRoom(lesson, layout, null);
  const room = { ...frame, bottom: corner.top };
  const width = (room.right - room.left) / columns, height = (room.top - room.bottom) / rows;
  const words = Math.max(...said.map((step, i) => linesOf(wordsOf(step, i, columns * rows), width - 2 * AIR).at(-1)?.down ?? 0));
  const high = height - words - 2 * AIR;
  if (high < 4 * LETTERING) return [];
  const made = board(lesson.development, { width: width - 2 * AIR, height: high, figures: lesson.figures, words: lesson.words.sheet });
  const { bounds } = made;
  if (bounds.right - bounds.left > width - 2 * AIR + CLOSE || bounds.top - bounds.bottom > high + CLOSE) return [];
  const cells = Array.from({ length: columns * rows }, (_, i): Box => {
    const left = room.left + (i % columns) * width, top = room.top - Math.floor(i / columns) * height;
    return { left, right: left + width, top, bottom: top - height };
  });
  return [{ layout, cells, board: made, words }];
}

function bodiesOf({ cells, board: drawn, words }: Grid, order: readonly Step[]): SheetBody[] {
  const pages = Math.ceil(order.length / cells.length);
  return Array.from({ length: pages }, (_, page) => ({
    scale: null,
    items: cells.flatMap((cell, i) => {
      const index = page * cells.length + i;
      const step = order[index];
      if (!step) return [];
      const inside = growBox(cell, -AIR);
      const text = lettered(linesOf(wordsOf(step, index, cells.length), inside.right - inside.left), { x: inside.left, y: inside.top });
      return [...borders(cell), ...text, ...picture(drawn, order, index, { ...inside, top: inside.top - words })];
    }),
  }));
}

/** The drawing as it stands at a step, in the middle of its room. */
function picture(drawn: Board, order: readonly Step[], index: number, { left, right, bottom, top }: Box): Item[] {
  const { construction, items, fresh } = drawnAt(drawn, order, index, null);
  const { bounds } = drawn;
  const by = { x: (left + right - bounds.left - bounds.right) / 2, y: (bottom + top - bounds.bottom - bounds.top) / 2 };
  const old = (item: Item): Item => (!fresh.has(item) && (item.kind === "path" || item.kind === "circle") && item.pen === "projection" ? { ...item, pen: "faint" } : item);
  return clearedFigures([...construction, ...items].map(old)).map((item) => moveItem(item, by));
}

function wordsOf({ title, fresh, text }: Step, index: number, count: number): string[] {
  return [`${index + 1}. ${title}`, count < MANY ? text : capital(fresh)];
}

/** Thin lines to the neighbours below and on the right. */
function borders({ left, right, bottom, top }: Box): Item[] {
  return [stroke("ruler", { x: right, y: bottom }, { x: right, y: top }), stroke("ruler", { x: left, y: bottom }, { x: right, y: bottom })];
}
