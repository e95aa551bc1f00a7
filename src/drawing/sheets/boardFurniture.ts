// What stands beside a board drawing: the description and the station table, each where there is room for it.

import type { Piece, Vec2 } from "../../core/index";
import { type Box, boxOfPoints } from "../box";
import type { Item } from "../display";
import type { Figures } from "../figures";
import { freeBox } from "../freeBox";
import { LETTERING } from "../lettering";
import { wrapText } from "../wrapText";
import type { SheetContext } from "./sheetContext";
import type { SheetWords } from "./sheetWords";
import { type TableRoom, stationTable, stationTables } from "./stationTable";

/** Round a thing, mm, and the pitch of lines of text. */
const AIR = 5, PITCH = 5.5;

/** Longest lines of the description, mm: the first for which there is room. */
const LINES = [120, 90, 150, 180, 70] as const;

/** Something of a known size, to be put anywhere. */
export interface Shape {
  readonly width: number;
  readonly height: number;
  /** With its top left corner there. */
  readonly at: (corner: Vec2) => readonly Item[];
}

/** One thing in the shapes it may take, the best first. */
export interface Furniture {
  readonly name: "description" | "table";
  readonly shapes: readonly Shape[];
}

export interface Furnished {
  readonly items: readonly Item[];
  /** What found no room. */
  readonly left: readonly Furniture[];
}

/** Description and station table of a piece; the table in parts where it is to go into a room (mm) that is too low for it. */
export function furnitureOf({ development: { pieces }, figures, words, sentences }: SheetContext, index: number, room: TableRoom | null = null): Furniture[] {
  const piece = pieces[index];
  const described = LINES.map((width) => ({ width, lines: sentences.flatMap((sentence) => wrapText(sentence, width, LETTERING)) }))
    .map(({ width, lines }): Shape => ({ width, height: lines.length * PITCH, at: (top) => lettered(lines, top) }));
  const tables = piece ? tablesOf(piece, figures, words, room) : [];
  return [...(sentences.length > 0 ? [{ name: "description", shapes: described } as const] : []), ...tables.map((shapes): Furniture => ({ name: "table", shapes }))];
}

function tablesOf(piece: Piece, figures: Figures, words: SheetWords, room: TableRoom | null): Shape[][] {
  if (!room) return [[stationTable(piece, figures, words), stationTable(piece, figures, words, true)]];
  return stationTables(piece, figures, words, { width: room.width - AIR, height: room.height - AIR }).map((part) => [part]);
}

/** The things in the frame clear of what is taken; in their order when nothing may stand before what comes first. */
export function furnished(things: readonly Furniture[], frame: Box, taken: readonly Box[], inOrder = false): Furnished {
  const all = [...taken];
  const items: Item[] = [];
  const left: Furniture[] = [];
  for (const thing of things) {
    const [found] = inOrder && left.length > 0 ? [] : thing.shapes.flatMap((shape) => {
      const free = freeBox(frame, all, { width: shape.width + AIR, height: shape.height + AIR });
      return free ? [{ ...shape, corner: { x: free.left + AIR / 2, y: free.top - AIR / 2 } }] : [];
    });
    if (!found) {
      left.push(thing);
      continue;
    }
    const { width, height, at, corner } = found;
    items.push(...at(corner));
    all.push(boxOfPoints([corner, { x: corner.x + width, y: corner.y - height }]));
  }
  return { items, left };
}

function lettered(lines: readonly string[], { x, y }: Vec2): Item[] {
  return lines.map((text, i) => ({ kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x, y: y - LETTERING - i * PITCH } }));
}
