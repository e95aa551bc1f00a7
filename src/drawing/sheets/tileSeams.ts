// How do the sheets of a tiled pattern go together? Trim lines along the middle of each overlap, with the marks that fall together on
// both sheets and the name of the neighbour, each where it meets nothing drawn of the piece, when there is such a place.

import type { Vec2 } from "../../core/index";
import { boundsOf } from "../bounds";
import { type ClearSpace, clearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";
import { LETTERING } from "../lettering";
import { moveItem } from "../moveItem";
import { stroke } from "../strokes";
import type { Tile } from "./tiles";

/** The parts of a shared edge at which match marks are sought first, and the name between them. */
const MARKS = [0.25, 0.75], NAME = 0.5;

/** Steps, as parts of the edge, by which they move along it to where it is free, and how many either way. */
const STEP = 0.02, STEPS = 9;

/** Half a match mark, mm. */
const MARK = 3;

/** Between the trim line and the name of the sheet beyond it; the strip there must take the letters. */
const NAME_AIR = 0.6;

/** The items of one tile, moved onto its page. `space` holds what is drawn of the piece. */
export function tileSeams(tile: Tile, tiles: readonly Tile[], overlap: number, space: ClearSpace, move: Vec2): Item[] {
  return edgesOf(tile, tiles, overlap).flatMap((edge): Item[] => {
    const along = (part: number) => ({ x: edge.from.x + part * (edge.to.x - edge.from.x), y: edge.from.y + part * (edge.to.y - edge.from.y) });
    const marks = MARKS.flatMap((part) => firstFree((at) => matchMark(along(at)), part, [space]));
    const taken = clearSpace(0);
    taken.take(marks);
    const name = overlap / 2 >= LETTERING + 2 * NAME_AIR ? firstFree((at) => [nameAt(edge, along(at))], NAME, [space, taken]) : [];
    return [stroke("trim", edge.from, edge.to), ...marks, ...name];
  }).map((item) => moveItem(item, move));
}

/** Drawn at the place nearest to `part` where it is free; at `part` itself where there is none. Sheets that share the edge find the same. */
function firstFree(draw: (part: number) => Item[], part: number, spaces: readonly ClearSpace[]): Item[] {
  const moves = Array.from({ length: STEPS }, (_, i) => [(i + 1) * STEP, -(i + 1) * STEP]).flat();
  const isFree = (items: readonly Item[]) => spaces.every((space) => space.isFree(boundsOf(items)));
  for (const by of [0, ...moves]) {
    const items = draw(part + by);
    if (isFree(items)) return items;
  }
  return draw(part);
}

interface Edge {
  readonly name: string;
  readonly from: Vec2;
  readonly to: Vec2;
  /** From the trim line to the foot of the name of the neighbour, and how that is turned. */
  readonly beside: Vec2;
  readonly turn: number;
}

function nameAt({ name, beside, turn }: Edge, { x, y }: Vec2): TextItem {
  return { kind: "text", pen: "lettering", text: name, height: LETTERING, align: "middle", turn, at: { x: x + beside.x, y: y + beside.y }, clear: true };
}

/** The edges that a tile shares, in the pattern's coordinates. */
function edgesOf({ column, row, window: { left, right, bottom, top } }: Tile, tiles: readonly Tile[], overlap: number): Edge[] {
  const half = overlap / 2;
  const edge = (columns: number, rows: number, from: Vec2, to: Vec2, beside: Vec2, turn: number): Edge[] => {
    const other = tiles.find((one) => one.column === column + columns && one.row === row + rows);
    return other ? [{ name: other.name, from, to, beside, turn }] : [];
  };
  const upright = Math.PI / 2, low = left + half, high = right - half, near = NAME_AIR, far = NAME_AIR + LETTERING;
  return [
    ...edge(-1, 0, { x: low, y: bottom }, { x: low, y: top }, { x: -near, y: 0 }, upright),
    ...edge(1, 0, { x: high, y: bottom }, { x: high, y: top }, { x: far, y: 0 }, upright),
    ...edge(0, -1, { x: left, y: top - half }, { x: right, y: top - half }, { x: 0, y: near }, 0),
    ...edge(0, 1, { x: left, y: bottom + half }, { x: right, y: bottom + half }, { x: 0, y: -far }, 0),
  ];
}

function matchMark({ x, y }: Vec2): Item[] {
  return [
    stroke("match mark", { x: x - MARK, y }, { x: x + MARK, y }),
    stroke("match mark", { x, y: y - MARK }, { x, y: y + MARK }),
    { kind: "circle", pen: "match mark", centre: { x, y }, radius: MARK / 2 },
  ];
}
