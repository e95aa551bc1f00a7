// A band along the foot of every page and one up its left side: a ruler on each axis, and what every page must say.

import type { Vec2 } from "../../core/index";
import type { Box } from "../box";
import type { Item } from "../display";
import { LETTERING, textWidth } from "../lettering";
import { stroke } from "../strokes";
import { type Area, fewestLines, placedSentences } from "./bandSentences";
import { RULER_TAIL, ruler, rulerLength } from "./ruler";

/** Width of a band, the base line of the first line of words in it and the pitch from there, mm; and how many lines it takes. */
export const BAND = 15;
const FIRST = 4.3, PITCH = 4.6, LINES = 3;

/** Longest ruler, and the least room for words beside it, mm. */
const RULER = 100, WORDS = 30;

/** Height of the name of a page, mm. */
const NAME = 7;

/** Before the ruler and after its words, and between it and words over it, mm. */
const AIR = 3, UNDER = 1.5;

/** The least length of a page inside its margins that takes both bands and something between them, mm. */
export const LEAST_FIELD = 110;

export interface PageBands {
  readonly items: readonly Item[];
  /** What is left of the box, mm: the same for all pages of a document on one paper. */
  readonly room: Box;
}

/** What is said in the bands; `check` is given the length of both rulers of the page. */
export interface BandWords {
  /** Large in the corner; "" for a page that needs no name. */
  readonly name: string;
  readonly check: (length: number) => string;
  readonly correction: string;
  /** What page it is; shortened before anything else. */
  readonly heading: string;
  /** The longest heading of the document's pages: room is kept for it. */
  readonly longest: string;
  /** The number of the sheet; "" for none. */
  readonly sheet: string;
}

/**
 * The bands of a page whose margins leave `box`. On a narrow page the ruler keeps its length and words stand in lines over the foot.
 * @throws RangeError for a box smaller than `LEAST_FIELD` either way.
 */
export function pageBands(box: Box, { name, check, correction, heading, longest, sheet }: BandWords): PageBands {
  const width = box.right - box.left - BAND, height = box.top - box.bottom - BAND;
  if (Math.min(width, height) < LEAST_FIELD - BAND - 1e-9) throw new RangeError(`no room for rulers: ${box.right - box.left} × ${box.top - box.bottom}`);
  const length = rulerLength(Math.min(width, height), RULER, AIR + RULER_TAIL);
  const taken = AIR + length + RULER_TAIL;
  const left = box.left + BAND, foot = box.bottom + BAND;
  const beside = areaOf(width - taken), above = areaOf(height - taken);
  const said = { check: check(length), correction, heading, sheet };
  const over: Area = { width: width - AIR, lines: fewestLines([beside, above], width - AIR, { ...said, heading: longest }) };
  const room: Box = { left, right: box.right, bottom: foot + heightOver(over.lines), top: box.top };
  const [besideLines = [], aboveLines = [], overLines = []] = placedSentences([beside, above, over], said);
  return {
    room,
    items: [
      ...nameIn({ x: box.left + BAND / 2, y: box.bottom + BAND / 2 }, name),
      ...ruler({ x: left + AIR, y: box.bottom + BAND / 2 }, length, "level"), ...ruler({ x: box.left + BAND / 2, y: foot + AIR }, length, "upright"),
      stroke("ruler", { x: left, y: room.bottom }, { x: box.right, y: room.bottom }), stroke("ruler", { x: left, y: room.bottom }, { x: left, y: box.top }),
      ...besideLines.map((text, i): Item => letters(text, { x: left + taken, y: foot - FIRST - i * PITCH }, 0)),
      ...aboveLines.map((text, i): Item => letters(text, { x: box.left + FIRST + i * PITCH, y: foot + taken }, Math.PI / 2)),
      ...overLines.map((text, i): Item => letters(text, { x: left + AIR, y: room.bottom - FIRST - i * PITCH }, 0)),
    ],
  };
}

/** The most that lines over the foot may take of a page this wide inside its margins, mm. */
export function mostOverFoot(width: number): number {
  const room = width - BAND - AIR;
  return heightOver(Math.ceil(ALL / room + 1));
}

/** The length of all that is said, with what wrapping wastes, mm. */
const ALL = 570;

function heightOver(lines: number): number {
  return lines > 0 ? lines * PITCH + UNDER : 0;
}

function areaOf(width: number): Area {
  return { width, lines: width < WORDS ? 0 : LINES };
}

/** As large as the corner takes. */
function nameIn({ x, y }: Vec2, name: string): Item[] {
  if (name === "") return [];
  const height = Math.min(NAME, (NAME * (BAND - 2)) / textWidth(name, NAME));
  return [{ kind: "text", pen: "lettering", text: name, height, align: "middle", turn: 0, at: { x, y: y - height / 2 } }];
}

function letters(text: string, at: Vec2, turn: number): Item {
  return { kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn, at };
}
