// The map of a tiled pattern: the whole of it small, under the borders of the sheets as they are trimmed, and their names.

import type { Vec2 } from "../../core/index";
import { boundsOf } from "../bounds";
import type { Box } from "../box";
import { clearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";
import { LETTERING, textWidth } from "../lettering";
import { segmentOnSheet } from "../place";
import { stroke } from "../strokes";
import type { TemplatePart } from "./templatePart";
import type { Tile } from "./tiles";

/** Heights of the names of sheets, mm: the first at which the longest goes into a sheet; where none does, every second or third is named. */
const HEIGHTS = [LETTERING, 2.5, 2] as const;

/** Round a name, and the steps in which it moves off the middle of its sheet to where it is free, mm. */
const AIR = 0.8, STEP = 1;

/** The map inside `box`; every name stands clear of the pattern, of borders and of other names. */
export function tileMap({ outlines }: Pick<TemplatePart, "outlines">, tiles: readonly Tile[], box: Box, overlap: number): Item[] {
  const cells = tiles.map((tile) => trimmed(tile, tiles, overlap / 2));
  const left = Math.min(...cells.map((one) => one.left)), right = Math.max(...cells.map((one) => one.right));
  const bottom = Math.min(...cells.map((one) => one.bottom)), top = Math.max(...cells.map((one) => one.top));
  const scale = Math.min((box.right - box.left) / (right - left), (box.top - box.bottom) / (top - bottom));
  const origin = { x: (box.left + box.right - scale * (left + right)) / 2, y: (box.bottom + box.top - scale * (bottom + top)) / 2 };
  const placed = cells.map((cell): Box => ({ left: origin.x + scale * cell.left, right: origin.x + scale * cell.right, bottom: origin.y + scale * cell.bottom, top: origin.y + scale * cell.top }));
  const pattern = outlines.map((segments): Item => ({
    kind: "path", pen: "outline", closed: true, segments: segments.map((segment) => segmentOnSheet({ origin, scale, turn: 0 }, segment)),
  }));
  const drawn = [...pattern, ...borders(placed)];
  return [...drawn, ...names(tiles, placed, drawn)];
}

/** What is left of a sheet inside its trim lines, in the pattern's coordinates. */
function trimmed({ column, row, window: { left, right, bottom, top } }: Tile, tiles: readonly Tile[], half: number): Box {
  const off = (columns: number, rows: number) => (tiles.some((one) => one.column === column + columns && one.row === row + rows) ? half : 0);
  return { left: left + off(-1, 0), right: right - off(1, 0), bottom: bottom + off(0, 1), top: top - off(0, -1) };
}

/** The sides of all sheets; what two of them share is drawn once, so that its dashes show. */
function borders(cells: readonly Box[]): Item[] {
  const level = joined(cells.flatMap(({ left, right, bottom, top }) => [{ at: bottom, from: left, to: right }, { at: top, from: left, to: right }]));
  const upright = joined(cells.flatMap(({ left, right, bottom, top }) => [{ at: left, from: bottom, to: top }, { at: right, from: bottom, to: top }]));
  return [
    ...level.map(({ at, from, to }) => stroke("trim", { x: from, y: at }, { x: to, y: at })),
    ...upright.map(({ at, from, to }) => stroke("trim", { x: at, y: from }, { x: at, y: to })),
  ];
}

interface Side {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Sides in one line that touch, as one. */
function joined(sides: readonly Side[]): Side[] {
  const found: Side[] = [];
  for (const side of [...sides].sort((a, b) => (Math.abs(a.at - b.at) > SAME ? a.at - b.at : a.from - b.from))) {
    const before = found.at(-1);
    if (before && Math.abs(before.at - side.at) <= SAME && side.from <= before.to + SAME) found[found.length - 1] = { ...before, to: Math.max(before.to, side.to) };
    else found.push(side);
  }
  return found;
}

/** Nearer lines are one, mm. */
const SAME = 1e-3;

/**
 * Each name in its own sheet, as large as the longest of them may be in the smallest; of every second, third … row and column where the
 * sheets are too small for any. Where the pattern leaves no room for one it is smaller, or left out: its neighbours say what it is.
 */
function names(tiles: readonly Tile[], cells: readonly Box[], drawn: readonly Item[]): Item[] {
  const smallest = HEIGHTS[HEIGHTS.length - 1] ?? LETTERING;
  const width = Math.min(...cells.map(({ left, right }) => right - left)), height = Math.min(...cells.map(({ bottom, top }) => top - bottom));
  const longest = (size: number) => Math.max(...tiles.map(({ name }) => textWidth(name, size))) + 2 * AIR;
  const fitting = HEIGHTS.filter((size) => longest(size) <= width && size + 2 * AIR <= height);
  const step = fitting.length > 0 ? 1 : Math.ceil(Math.max(longest(smallest) / width, (smallest + 2 * AIR) / height));
  const space = clearSpace(AIR);
  space.take(step === 1 ? drawn : drawn.filter((item) => "pen" in item && item.pen === "outline"));
  return tiles.flatMap((tile, i): Item[] => {
    const cell = cells[i];
    if (!cell || tile.column % step !== 0 || tile.row % step !== 0) return [];
    const room = step === 1 ? cell : { ...cell, right: cell.left + step * width, bottom: cell.top - step * height };
    for (const size of step === 1 ? fitting : [smallest]) {
      const named = nameIn(tile.name, room, size, (item) => space.isFree(boundsOf([item])));
      if (named) {
        space.take([named]);
        // Over the borders of small sheets the paper is kept clear behind it.
        return [step === 1 ? named : { ...named, clear: true }];
      }
    }
    return [];
  });
}

/** The name at the free place nearest to the middle of its sheet, wholly inside it; null when there is none. */
function nameIn(text: string, { left, right, bottom, top }: Box, height: number, isFree: (item: TextItem) => boolean): TextItem | null {
  const x = (left + right) / 2, y = (bottom + top) / 2;
  const far = { x: (right - left - textWidth(text, height)) / 2 - AIR, y: (top - bottom - height) / 2 - AIR };
  if (far.x < 0 || far.y < 0) return null;
  const at = (dx: number, dy: number): TextItem => ({ kind: "text", pen: "lettering", text, height, align: "middle", turn: 0, at: { x: x + dx, y: y + dy - height / 2 } });
  return placesWithin(far).map(({ x: dx, y: dy }) => at(dx, dy)).find(isFree) ?? null;
}

/** Steps off the middle, the nearest first. */
function placesWithin(far: Vec2): Vec2[] {
  const along = (most: number) => Array.from({ length: 2 * Math.floor(most / STEP) + 1 }, (_, i) => (i - Math.floor(most / STEP)) * STEP);
  return along(far.x).flatMap((x) => along(far.y).map((y) => ({ x, y }))).sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
}
