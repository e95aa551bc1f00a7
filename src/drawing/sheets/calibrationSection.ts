// The page that tells how true a printer is: a long ruler on each axis and a square with its diagonals.

import type { Box } from "../box";
import type { Item } from "../display";
import { LETTERING } from "../lettering";
import { polygon, stroke } from "../strokes";
import { wrapText } from "../wrapText";
import { type Layout, tileLayouts } from "./layouts";
import { type PaperField, paperField } from "./paperField";
import { RULER_REACH, RULER_TAIL, ruler, rulerLength } from "./ruler";
import { type Section, pageOn } from "./section";
import type { PageSetup } from "./setup";
import { type SheetContext, correctionText } from "./sheetContext";
import { corners } from "./titleBlock";

/** Longest ruler, mm: as long as the steel rules at hand. */
const LONGEST = 300;

/** Side of the square, height of the title, pitch of lines and air, mm. */
const SQUARE = 100, TITLE = 5, PITCH = 6, AIR = 6;

/** From the corner to the zero of each ruler, clear of the figures of the other, mm. */
const CLEAR = RULER_REACH + 2;

/** Length of both rulers, mm: across the paper's width and along its height, the paper upright. */
export interface CalibrationLengths {
  readonly across: number;
  readonly along: number;
}

/** The lengths of the rulers on the calibration page of this paper. */
export function calibrationLengths(setup: PageSetup): CalibrationLengths {
  const { across, along } = rulersOf(fieldOf(setup).field);
  return { across, along };
}

/** The page; it is upright, however the other pages lie. What it has no room to say goes on to further pages. */
export function calibrationSection(context: SheetContext): Section {
  const { setup, words } = context;
  const { layout: { paper }, field } = fieldOf(setup);
  const { box } = field;
  const { across, along, origin } = rulersOf(field);
  const { calibration: said } = words;
  const left = origin.x + RULER_REACH + AIR, width = box.right - AIR - left;
  const steps = [said.across(across) + ", " + said.along(along), correctionText(context, paper.name), ...said.steps].map((sentence) => wrapText(sentence, width, LETTERING));
  const foot = origin.y + RULER_REACH + AIR;
  const [first, ...more] = linesIn(steps, box.top - AIR - TITLE, foot, box.bottom + AIR);
  const letters = (text: string, y: number, height: number): Item => ({ kind: "text", pen: "lettering", text, height, align: "start", turn: 0, at: { x: left, y } });
  const written = (lines: readonly Line[]) => [letters(said.title, box.top - AIR - TITLE, TITLE), ...lines.map(({ text, y }) => letters(text, y, LETTERING))];
  const page = pageOn(field, "1", [
    polygon("frame", corners(box)), ...ruler({ x: origin.x + CLEAR, y: origin.y }, across, "level"), ...ruler({ x: origin.x, y: origin.y + CLEAR }, along, "upright"), ...written(first ?? []),
    ...square({ left, right: left + width, bottom: foot, top: (first?.at(-1)?.y ?? foot) - AIR }, context),
  ]);
  const others = more.map((lines, i) => pageOn(field, String(i + 2), [polygon("frame", corners(box)), ...written(lines)]));
  return { kind: "calibration", title: words.document.calibration, layout: "one", paper: paper.name, landscape: false, columns: 1, rows: 1, scale: 1, pages: [page, ...others] };
}

interface Line {
  readonly text: string;
  readonly y: number;
}

/** Sentences from under the title at `top` down to `foot`, those that go on to further pages down to `next`; half a pitch between them. */
function linesIn(sentences: readonly (readonly string[])[], top: number, foot: number, next: number): Line[][] {
  const pages: Line[][] = [[]];
  let y = top;
  for (const lines of sentences) {
    const own = pages.at(-1) ?? [];
    const between = own.length > 0 ? PITCH / 2 : 0;
    const fits = y - between - lines.length * PITCH >= (pages.length > 1 ? next : foot);
    if (!fits && own.length > 0) pages.push([]);
    const begin = fits || own.length === 0 ? y - between : top;
    pages.at(-1)?.push(...lines.map((text, i) => ({ text, y: begin - (i + 1) * PITCH })));
    y = begin - lines.length * PITCH;
  }
  return pages;
}

/** Both rulers beside one corner. */
function rulersOf({ box }: Pick<PaperField, "box">) {
  const origin = { x: box.left + AIR + RULER_REACH, y: box.bottom + AIR + RULER_REACH };
  return { origin, across: rulerLength(box.right - origin.x - CLEAR, LONGEST, RULER_TAIL), along: rulerLength(box.top - origin.y - CLEAR, LONGEST, RULER_TAIL) };
}

function fieldOf(setup: PageSetup): { layout: Layout; field: PaperField } {
  const [layout] = tileLayouts({ ...setup, orientation: "portrait" }, { width: LONGEST, height: LONGEST });
  if (!layout) throw new RangeError("no paper");
  return { layout, field: paperField(layout.paper, false, setup) };
}

/** A square with its diagonals, where the words leave room for it. */
function square({ left, right, bottom, top }: Box, { words: { calibration }, figures }: SheetContext): Item[] {
  const side = Math.min(SQUARE, Math.floor(Math.min(right - left, top - bottom - PITCH) / 10) * 10);
  if (side < 20) return [];
  const box: Box = { left, right: left + side, bottom, top: bottom + side };
  return [
    polygon("ruler", corners(box)), stroke("ruler", { x: box.left, y: box.bottom }, { x: box.right, y: box.top }), stroke("ruler", { x: box.left, y: box.top }, { x: box.right, y: box.bottom }),
    { kind: "text", pen: "lettering", text: calibration.diagonal(figures.length(side * Math.SQRT2)), height: LETTERING, align: "start", turn: 0, at: { x: box.left, y: box.top + 2 } },
  ];
}
