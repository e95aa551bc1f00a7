// The first page of a tiled template, or two on small paper: what it is, and the map of its sheets.

import type { Vec2 } from "../../core/index";
import { type Box, growBox } from "../box";
import type { Item } from "../display";
import { LETTERING } from "../lettering";
import { segmentOnSheet } from "../place";
import { polygon } from "../strokes";
import type { Page } from "./page";
import type { PaperField } from "./paperField";
import { type NamedPaper, pageOn } from "./section";
import { type SheetContext, bandsOf } from "./sheetContext";
import { templateCells } from "./templateCells";
import type { TemplatePart } from "./templatePart";
import type { Tile } from "./tiles";
import { type Cell, corners, titleBlock } from "./titleBlock";

/** Round the map, and its least height, mm. */
const AIR = 4, LEAST = 40;

/** The title block and the map; on a page of its own where the block leaves it no room. */
export function coverPages(context: SheetContext, part: TemplatePart, tiles: readonly Tile[], field: PaperField, paper: NamedPaper): Page[] {
  const { words } = context;
  const { room } = bandsOf(context, field, paper, "");
  const joining: Cell = { label: words.field.map, value: [words.map, words.joining], wide: true };
  const blockSaying = (sheet: string) => titleBlock([...templateCells(context, part, sheet), joining], room.right - room.left);
  const own = room.top - room.bottom - blockSaying(words.sheetOf(1, tiles.length + 1)).height < LEAST;
  const all = tiles.length + (own ? 2 : 1);
  const block = blockSaying(words.sheetOf(1, all));
  const base = (sheet: number) => [...bandsOf(context, field, paper, part.heading, words.sheetOf(sheet, all)).items, polygon("frame", corners(room))];
  const map = mapOf(part, tiles, growBox({ ...room, bottom: room.bottom + (own ? 0 : block.height) }, -AIR), context.setup.overlap);
  const titled = [...base(1), ...block.at({ x: room.left, y: room.bottom })];
  return own ? [pageOn(field, "cover", titled), pageOn(field, "map", [...base(2), ...map])] : [pageOn(field, "cover", [...titled, ...map])];
}

/** The whole pattern small, under the borders and names of the sheets. */
function mapOf(part: TemplatePart, tiles: readonly Tile[], map: Box, overlap: number): Item[] {
  const windows = tiles.map(({ window }) => window);
  const left = Math.min(...windows.map((one) => one.left)), right = Math.max(...windows.map((one) => one.right));
  const bottom = Math.min(...windows.map((one) => one.bottom)), top = Math.max(...windows.map((one) => one.top));
  const scale = Math.min((map.right - map.left) / (right - left), (map.top - map.bottom) / (top - bottom));
  const origin = { x: (map.left + map.right - scale * (left + right)) / 2, y: (map.bottom + map.top - scale * (bottom + top)) / 2 };
  const point = (x: number, y: number): Vec2 => ({ x: origin.x + scale * x, y: origin.y + scale * y });
  const half = overlap / 2;
  const sheets = tiles.flatMap(({ name, window }): Item[] => [
    polygon("trim", [
      point(window.left + half, window.bottom + half), point(window.right - half, window.bottom + half),
      point(window.right - half, window.top - half), point(window.left + half, window.top - half),
    ]),
    {
      kind: "text", pen: "lettering", text: name, height: LETTERING, align: "middle", turn: 0, clear: true,
      at: { x: point((window.left + window.right) / 2, 0).x, y: point(0, (window.bottom + window.top) / 2).y - LETTERING / 2 },
    },
  ]);
  const outlines = part.outlines.map((segments): Item => ({
    kind: "path", pen: "outline", closed: true, segments: segments.map((segment) => segmentOnSheet({ origin, scale, turn: 0 }, segment)),
  }));
  return [...outlines, ...sheets];
}
