// What stands beside a board drawing: the description and the station table, each where there is room for it.

import type { Piece, Vec2 } from "../../core/index";
import type { Box } from "../box";
import type { Item } from "../display";
import type { Figures } from "../figures";
import { LETTERING } from "../lettering";
import { wrapText } from "../wrapText";
import { type Shape, setBeside } from "./setBeside";
import type { SheetContext } from "./sheetContext";
import type { SheetWords } from "./sheetWords";
import { type TableRoom, stationTable, stationTables } from "./stationTable";

/** Round a thing, mm, and the pitch of lines of text. */
const AIR = 5, PITCH = 5.5;

/** Longest lines of the description, mm: the first for which there is room. */
const LINES = [120, 90, 150, 180, 70] as const;

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
  return setBeside(things, ({ shapes }) => shapes, frame, taken, { air: AIR, kept: 0, inOrder });
}

function lettered(lines: readonly string[], { x, y }: Vec2): Item[] {
  return lines.map((text, i) => ({ kind: "text", pen: "lettering", text, height: LETTERING, align: "start", turn: 0, at: { x, y: y - LETTERING - i * PITCH } }));
}
