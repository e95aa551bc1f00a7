// The pages of a piece too large for one sheet: a cover with the map of the sheets, then one page a tile.

import type { Vec2 } from "../../core/index";
import type { Box } from "../box";
import type { Item } from "../display";
import { LETTERING } from "../lettering";
import { stroke } from "../strokes";
import { coverPages } from "./coverPage";
import type { Layout } from "./layouts";
import { paperField } from "./paperField";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf } from "./sheetContext";
import type { TemplatePart } from "./templatePart";
import { type Tile, tilesOver } from "./tiles";

/** Match marks stand at these parts of a shared edge. */
const MARKS = [0.25, 0.75];

/** Half a match mark, mm. */
const MARK = 3;

/** Between the trim line and the name of the sheet beyond it; the strip there must take the letters. */
const NAME_AIR = 0.6;

/** Cover and tiles of a part. @throws RangeError for an overlap of half the room or more. */
export function tileSection(context: SheetContext, part: TemplatePart, { paper, landscape }: Layout): Section {
  const { words, setup: { overlap } } = context;
  const field = paperField(paper, landscape, context.setup);
  const { room } = bandsOf(context, field, paper, "");
  const tiles = tilesOver(part, room.right - room.left, room.top - room.bottom, overlap);
  const covers = coverPages(context, part, tiles, field, paper);
  const pages = tiles.map((tile, i) => {
    const bands = bandsOf(context, field, paper, part.heading, words.sheetOf(i + 1 + covers.length, tiles.length + covers.length), tile.name);
    const move = { x: room.left - tile.window.left, y: room.bottom - tile.window.bottom };
    return pageOn(field, tile.name, [...bands.items, { kind: "group", move, clip: room, items: part.art }, ...seams(tile, tiles, room, overlap)]);
  });
  return {
    kind: "template", title: part.name, layout: "tiles", paper: paper.name, landscape, scale: 1,
    columns: 1 + Math.max(...tiles.map(({ column }) => column)), rows: 1 + Math.max(...tiles.map(({ row }) => row)),
    pages: [...covers, ...pages],
  };
}

interface Edge {
  readonly name: string;
  readonly from: Vec2;
  readonly to: Vec2;
  /** Where the name of the neighbour stands, and turned how. */
  readonly at: Vec2;
  readonly turn: number;
}

/** Trim lines along the middle of each overlap, with the marks that fall together on both sheets and the name of the neighbour. */
function seams(tile: Tile, tiles: readonly Tile[], window: Box, overlap: number): Item[] {
  return edgesOf(tile, tiles, window, overlap).flatMap(({ name, from, to, at, turn }): Item[] => [
    stroke("trim", from, to),
    ...MARKS.flatMap((part) => matchMark({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) })),
    ...(overlap / 2 >= LETTERING + 2 * NAME_AIR ? [{ kind: "text", pen: "lettering", text: name, height: LETTERING, align: "middle", turn, at, clear: true } as const] : []),
  ]);
}

function edgesOf(tile: Tile, tiles: readonly Tile[], { left, right, bottom, top }: Box, overlap: number): Edge[] {
  const half = overlap / 2, x = (left + right) / 2, y = (bottom + top) / 2;
  const edge = (column: number, row: number, from: Vec2, to: Vec2, at: Vec2, turn: number): Edge[] => {
    const other = tiles.find((one) => one.column === tile.column + column && one.row === tile.row + row);
    return other ? [{ name: other.name, from, to, at, turn }] : [];
  };
  const upright = Math.PI / 2, low = left + half, high = right - half;
  return [
    ...edge(-1, 0, { x: low, y: bottom }, { x: low, y: top }, { x: low - NAME_AIR, y }, upright),
    ...edge(1, 0, { x: high, y: bottom }, { x: high, y: top }, { x: high + NAME_AIR + LETTERING, y }, upright),
    ...edge(0, -1, { x: left, y: top - half }, { x: right, y: top - half }, { x, y: top - half + NAME_AIR }, 0),
    ...edge(0, 1, { x: left, y: bottom + half }, { x: right, y: bottom + half }, { x, y: bottom + half - NAME_AIR - LETTERING }, 0),
  ];
}

function matchMark({ x, y }: Vec2): Item[] {
  return [
    stroke("match mark", { x: x - MARK, y }, { x: x + MARK, y }),
    stroke("match mark", { x, y: y - MARK }, { x, y: y + MARK }),
    { kind: "circle", pen: "match mark", centre: { x, y }, radius: MARK / 2 },
  ];
}
