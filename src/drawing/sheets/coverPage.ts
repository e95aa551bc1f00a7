// The first page of a tiled template: what it is, and the map of its sheets.

import type { Vec2 } from "../../core/index";
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

/** Round the map, mm. */
const AIR = 4;

/** The whole pattern small, under the borders and names of the sheets, and the title block. */
export function coverPage(context: SheetContext, part: TemplatePart, tiles: readonly Tile[], field: PaperField, paper: NamedPaper): Page {
  const { words, setup: { overlap } } = context;
  const { items, room } = bandsOf(context, field, paper, part.heading, words.sheetOf(1, tiles.length + 1));
  const joining: Cell = { label: words.field.map, value: [words.map, words.joining], wide: true };
  const block = titleBlock([...templateCells(context, part, words.sheetOf(1, tiles.length + 1)), joining], room.right - room.left);
  const map = { left: room.left + AIR, right: room.right - AIR, bottom: room.bottom + block.height + AIR, top: room.top - AIR };
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
  return pageOn(field, "cover", [...items, ...block.at({ x: room.left, y: room.bottom }), polygon("frame", corners(room)), ...outlines, ...sheets]);
}
