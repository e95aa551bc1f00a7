// The first pages of a tiled template: what it is, on as many pages as small paper takes, and the map of its sheets.

import { growBox } from "../box";
import { polygon } from "../strokes";
import type { Page } from "./page";
import type { PaperField } from "./paperField";
import { type NamedPaper, pageOn } from "./section";
import { type SheetContext, bandsOf } from "./sheetContext";
import { templateCells } from "./templateCells";
import type { TemplatePart } from "./templatePart";
import { tileMap } from "./tileMap";
import type { Tile } from "./tiles";
import { type Cell, corners, titleBlocks } from "./titleBlock";

/** Round the map, and its least height, mm. */
const AIR = 4, LEAST = 40;

/** The title block and the map; on a page of its own where the block leaves it no room. */
export function coverPages(context: SheetContext, part: TemplatePart, tiles: readonly Tile[], field: PaperField, paper: NamedPaper): Page[] {
  const { words, setup: { overlap } } = context;
  const { room } = bandsOf(context, field, paper, part.heading);
  const width = room.right - room.left, height = room.top - room.bottom;
  const joining: Cell = { label: words.field.map, value: [words.map, words.joining], wide: true };
  const blocksSaying = (sheet: string) => titleBlocks([...templateCells(context, part, sheet), joining], width, height);
  const [only, ...more] = blocksSaying(words.sheetOf(1, tiles.length + 1));
  const own = more.length > 0 || !only || height - only.height < LEAST;
  const all = tiles.length + 1 + more.length + (own ? 1 : 0);
  const base = (sheet: number) => [...bandsOf(context, field, paper, part.heading, words.sheetOf(sheet, all)).items, polygon("frame", corners(room))];
  const blocks = blocksSaying(words.sheetOf(1, all));
  const titled = blocks.map((block, i) => [...base(i + 1), ...block.at({ x: room.left, y: more.length > 0 ? room.top - block.height : room.bottom })]);
  const map = tileMap(part, tiles, growBox({ ...room, bottom: room.bottom + (own ? 0 : (blocks[0]?.height ?? 0)) }, -AIR), overlap);
  const named = (i: number) => (i === 0 ? "cover" : `cover ${i + 1}`);
  if (!own) return titled.map((items) => pageOn(field, "cover", [...items, ...map]));
  return [...titled.map((items, i) => pageOn(field, named(i), items)), pageOn(field, "map", [...base(titled.length + 1), ...map])];
}
