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

/** Side of the square, pitch of lines and air, mm. */
const SQUARE = 100, PITCH = 6, AIR = 6;

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

/** The page; it is upright, however the other pages lie. */
export function calibrationSection(context: SheetContext): Section {
  const { setup, words } = context;
  const { layout: { paper }, field } = fieldOf(setup);
  const { box } = field;
  const { across, along, origin } = rulersOf(field);
  const { calibration: said } = words;
  const left = origin.x + RULER_REACH + AIR, width = box.right - AIR - left;
  const steps = [said.across(across) + ", " + said.along(along), correctionText(context, paper.name), ...said.steps].flatMap((sentence, i) =>
    wrapText(sentence, width, LETTERING).map((text, line) => ({ text, first: line === 0 && i > 0 })));
  const items: Item[] = [];
  let y = box.top - AIR - 5;
  items.push({ kind: "text", pen: "lettering", text: said.title, height: 5, align: "start", turn: 0, at: { x: left, y } });
  for (const { text, first } of steps) {
    y -= PITCH + (first ? PITCH / 2 : 0);
    items.push({ kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x: left, y } });
  }
  const page = pageOn(field, "1", [
    polygon("frame", corners(box)), ...ruler({ x: origin.x + CLEAR, y: origin.y }, across, "level"), ...ruler({ x: origin.x, y: origin.y + CLEAR }, along, "upright"), ...items,
    ...square({ left, right: left + width, bottom: origin.y + RULER_REACH + AIR, top: y - AIR }, context),
  ]);
  return { kind: "calibration", title: words.document.calibration, layout: "one", paper: paper.name, landscape: false, columns: 1, rows: 1, scale: 1, pages: [page] };
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
