// A band along the foot of every page and one up its left side: a ruler on each axis, and what every page must say.

import type { Vec2 } from "../../core/index";
import type { Box } from "../box";
import type { Item } from "../display";
import { LETTERING, textWidth } from "../lettering";
import { stroke } from "../strokes";
import { shortened, wrapText } from "../wrapText";
import { RULER_TAIL, ruler, rulerLength } from "./ruler";

/** Width of a band, the base line of the first line of words in it and the pitch from there, mm; and how many lines it takes. */
export const BAND = 15;
const FIRST = 4.3, PITCH = 4.6, LINES = 3;

/** Longest ruler, shortest ruler, and the least room for words beside it, mm. */
const RULER = 100, SHORTEST = 50, WORDS = 30;

/** Height of the name of a page, mm. */
const NAME = 7;

/** Before the ruler and after its words, mm. */
const AIR = 3;

export interface PageBands {
  readonly items: readonly Item[];
  /** What is left of the box, mm. */
  readonly room: Box;
}

/** What is said in the bands; `check` is given the length of the longest ruler on the page. */
export interface BandWords {
  /** Large in the corner; "" for a page that needs no name. */
  readonly name: string;
  readonly check: (length: number) => string;
  readonly said: readonly string[];
}

/**
 * The bands of a page whose margins leave `box`.
 * @throws RangeError for a box that leaves no room for a ruler of 50 mm on both axes (`LEAST_FIELD`).
 */
export function pageBands(box: Box, { name, check, said }: BandWords): PageBands {
  const room: Box = { ...box, left: box.left + BAND, bottom: box.bottom + BAND };
  const level = rulerLength(room.right - room.left, RULER, AIR + RULER_TAIL + WORDS), upright = rulerLength(room.top - room.bottom, RULER, AIR + RULER_TAIL + WORDS);
  if (Math.min(level, upright) < SHORTEST) throw new RangeError(`no room for rulers: ${box.right - box.left} × ${box.top - box.bottom}`);
  const across = { x: room.left + AIR, y: box.bottom + BAND / 2 }, up = { x: box.left + BAND / 2, y: room.bottom + AIR };
  const beside = { x: across.x + level + RULER_TAIL, width: room.right - across.x - level - RULER_TAIL };
  const above = { y: up.y + upright + RULER_TAIL, width: room.top - up.y - upright - RULER_TAIL };
  const checkFirst = beside.width < above.width;
  const foot = checkFirst ? [check(Math.max(level, upright))] : said, side = checkFirst ? said : [check(Math.max(level, upright))];
  return {
    room,
    items: [
      ...nameIn({ x: box.left + BAND / 2, y: box.bottom + BAND / 2 }, name), ...ruler(across, level, "level"), ...ruler(up, upright, "upright"),
      stroke("ruler", { x: room.left, y: room.bottom }, { x: room.right, y: room.bottom }), stroke("ruler", { x: room.left, y: room.bottom }, { x: room.left, y: room.top }),
      ...linesOf(foot, beside.width).map((text, i): Item => letters(text, { x: beside.x, y: room.bottom - FIRST - i * PITCH }, 0)),
      ...linesOf(side, above.width).map((text, i): Item => letters(text, { x: box.left + FIRST + i * PITCH, y: above.y }, Math.PI / 2)),
    ],
  };
}

/** As large as the corner takes. */
function nameIn({ x, y }: Vec2, name: string): Item[] {
  if (name === "") return [];
  const height = Math.min(NAME, (NAME * (BAND - 2)) / textWidth(name, NAME));
  return [{ kind: "text", pen: "lettering", text: name, height, align: "middle", turn: 0, at: { x, y: y - height / 2 } }];
}

/** No more lines than the band takes: the first sentence is shortened before the others are. */
function linesOf([first = "", ...others]: readonly string[], width: number): string[] {
  const rest = others.flatMap((sentence) => wrapText(sentence, width, LETTERING));
  return [...fitted(wrapText(first, width, LETTERING), Math.max(1, LINES - rest.length), width), ...fitted(rest, LINES - 1, width)];
}

/** At most `most` lines, the last of them saying that there was more. */
function fitted(lines: readonly string[], most: number, width: number): string[] {
  return lines.length <= most ? [...lines] : [...lines.slice(0, most - 1), shortened(lines.slice(most - 1).join(" "), width, LETTERING)];
}

function letters(text: string, at: Vec2, turn: number): Item {
  return { kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn, at };
}

/** The least length of a page inside its margins that takes both bands, mm. */
export const LEAST_FIELD = BAND + AIR + SHORTEST + RULER_TAIL + WORDS;

