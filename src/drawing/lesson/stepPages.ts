// The construction as pictures, so many to a page: each step as far as it has come, what is new in full lines over the faint rest, with
// its name and what is done. The last, with all dimensions, stands alone.

import { type Box, growBox } from "../box";
import { clearedFigures } from "../dimension/clearedFigures";
import type { Item } from "../display";
import { moveItem } from "../moveItem";
import { type Layout, layoutsFor } from "../sheets/layouts";
import { drawnAt } from "../steps/drawnAt";
import { linesApart } from "../steps/linesApart";
import type { Step } from "../steps/steps";
import { stroke } from "../strokes";
import type { SheetBody } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { lettered, linesOf } from "./lessonText";
import { AIR, type Grid, drawnIn, gridOn, pictureRoom, wordsOf } from "./stepGrid";

/** Columns by rows for so many to a page, tried in turn. */
const GRIDS: Readonly<Record<number, readonly (readonly [number, number])[]>> = { 6: [[3, 2], [2, 3]], 4: [[2, 2], [1, 4], [4, 1]], 2: [[2, 1], [1, 2]], 1: [[1, 1]] };

/** Fewer to a page are drawn where figures of the usual height would smother so many. */
const COUNTS = [6, 4, 2, 1];

/** As long as a sheet cut from a roll is made, mm. */
const ROLL = 600;

/** Pages of pictures; null on paper too small for a single one. */
export function stepPages(lesson: LessonSheets): { readonly layout: Layout; readonly bodies: readonly SheetBody[] } | null {
  const layouts = layoutsFor(lesson.setup, { width: ROLL, height: ROLL });
  const few = bestGrid(lesson, layouts, COUNTS.filter((one) => one <= lesson.stepsPerPage), true);
  const last = few && bestGrid(lesson, [few.layout], [1], false);
  return few && last && { layout: few.layout, bodies: [...bodiesOf(few, few.order, 0), ...bodiesOf(last, last.order.slice(-1), last.order.length - 1)] };
}

/** As many to a page as have room; with all words where that costs no picture. */
function bestGrid(lesson: LessonSheets, layouts: readonly Layout[], counts: readonly number[], bare: boolean): Grid | null {
  const said = drawnIn(lesson, ANY, bare).order;
  for (const count of counts) {
    for (const whole of [true, false]) {
      const grids = layouts.flatMap((layout) => (GRIDS[count] ?? []).flatMap((shape) => PLACES.flatMap((place) => gridOn(lesson, layout, shape, { whole, place }, bare, said))));
      const [best] = grids.sort((a, b) => b.board.scale - a.board.scale);
      if (best) return best;
    }
  }
  return null;
}

const PLACES = ["over", "beside"] as const;

/** A window to draw in while only the words are wanted, mm. */
const ANY = { width: 300, height: 200 };

/** Pages of some of the steps, the first of them with this number in the order. */
function bodiesOf(grid: Grid, some: readonly Step[], first: number): SheetBody[] {
  const { cells, words } = grid;
  const pages = Math.ceil(some.length / cells.length);
  return Array.from({ length: pages }, (_, page) => ({
    scale: null,
    items: cells.flatMap((cell, i) => {
      const step = some[page * cells.length + i];
      if (!step) return [];
      const index = first + page * cells.length + i;
      const inside = growBox(cell, -AIR);
      const text = lettered(linesOf(wordsOf(step, index, words.whole), words.width), { x: inside.left, y: inside.top });
      return [...borders(cell), ...text, ...picture(grid, index, pictureRoom(inside, words))];
    }),
  }));
}

/** The drawing as it stands at a step, in the middle of its room. */
function picture({ board: drawn, order, bounds }: Grid, index: number, { left, right, bottom, top }: Box): Item[] {
  const { construction, items, fresh } = drawnAt(drawn, order, index, null);
  const by = { x: (left + right - bounds.left - bounds.right) / 2, y: (bottom + top - bounds.bottom - bounds.top) / 2 };
  const old = (item: Item): Item => ((item.kind === "path" || item.kind === "circle") && item.pen === "projection" ? { ...item, pen: "faint" } : item);
  const thin = linesApart([...construction.filter((item) => fresh.has(item)), ...construction.filter((item) => !fresh.has(item)).map(old)]);
  return clearedFigures([...thin, ...items.map((item) => (fresh.has(item) ? item : old(item)))]).map((item) => moveItem(item, by));
}

/** Thin lines to the neighbours below and on the right. */
function borders({ left, right, bottom, top }: Box): Item[] {
  return [stroke("ruler", { x: right, y: bottom }, { x: right, y: top }), stroke("ruler", { x: left, y: bottom }, { x: right, y: bottom })];
}
