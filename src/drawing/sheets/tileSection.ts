// The pages of a piece too large for one sheet: a cover with the map of the sheets, then one page a tile.

import { boundsOf } from "../bounds";
import { type Box, growBox } from "../box";
import { clearSpace } from "../clearSpace";
import type { Item } from "../display";
import { coverPages } from "./coverPage";
import type { Layout } from "./layouts";
import { paperField } from "./paperField";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf } from "./sheetContext";
import type { TemplatePart } from "./templatePart";
import { tilesOver } from "./tiles";
import { tileSeams } from "./tileSeams";

/** Between what is drawn and the border of the first and the last sheet, mm. */
const AIR = 2;

/** Between a match mark or a name and what is drawn of the piece, mm. */
const CLEAR = 1;

/** Cover and tiles of a part. @throws RangeError for an overlap of half the room or more. */
export function tileSection(context: SheetContext, part: TemplatePart, { paper, landscape }: Layout): Section {
  const { words, setup: { overlap } } = context;
  const field = paperField(paper, landscape, context.setup);
  const { room } = bandsOf(context, field, paper, part.heading);
  const tiles = tilesOver({ ...part, bounds: growBox(part.bounds, AIR) }, room.right - room.left, room.top - room.bottom, overlap);
  const covers = coverPages(context, part, tiles, field, paper);
  const space = clearSpace(CLEAR);
  space.take(part.art);
  const pages = tiles.map((tile, i) => {
    const bands = bandsOf(context, field, paper, part.heading, words.sheetOf(i + 1 + covers.length, tiles.length + covers.length), tile.name);
    const move = { x: room.left - tile.window.left, y: room.bottom - tile.window.bottom };
    return pageOn(field, tile.name, [...bands.items, { kind: "group", move, clip: room, items: part.art }, ...within(room, tileSeams(tile, tiles, overlap, space, move))]);
  });
  return {
    kind: "template", title: part.name, layout: "tiles", paper: paper.name, landscape, scale: 1,
    columns: 1 + Math.max(...tiles.map(({ column }) => column)), rows: 1 + Math.max(...tiles.map(({ row }) => row)),
    pages: [...covers, ...pages],
  };
}

/** Where sheets share less than a match mark takes, each shows what of it lies on its own side of the bands: laid edge to edge they make the whole. */
function within(room: Box, items: readonly Item[]): Item[] {
  const { left, right, bottom, top } = boundsOf(items), wide = growBox(room, 1e-6);
  const isInside = left >= wide.left && right <= wide.right && bottom >= wide.bottom && top <= wide.top;
  return isInside ? [...items] : [{ kind: "group", move: { x: 0, y: 0 }, clip: room, items: [...items] }];
}
