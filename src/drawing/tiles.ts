// A pattern cut up into overlapping windows: which there are, and which of them show anything.

import { type Vec2, flattenSegments } from "../core/index";
import { type Box, boxOfPoints } from "./box";
import { clearSpace } from "./clearSpace";
import type { Item } from "./display";

/** Artwork is repeated past each shared edge, mm. */
export const OVERLAP = 10;

export interface Tile {
  /** Row letter from the top, column number from the left. */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** What it shows, in the pattern's coordinates. */
  readonly window: Box;
}

/** Windows of the given size (mm) over `bounds`, `OVERLAP` shared with each neighbour; those that would be blank are left out. */
export function tilesOver(art: readonly Item[], bounds: Box, width: number, height: number): Tile[] {
  const columns = count(bounds.right - bounds.left, width);
  const rows = count(bounds.top - bounds.bottom, height);
  const left = (bounds.left + bounds.right - spanned(columns, width)) / 2;
  const top = (bounds.top + bounds.bottom + spanned(rows, height)) / 2;
  const space = clearSpace(0);
  space.take(art);
  const inside = insideTest(art);
  return Array.from({ length: rows * columns }, (_, i): Tile => {
    const column = i % columns, row = Math.floor(i / columns);
    const x = left + column * (width - OVERLAP), y = top - row * (height - OVERLAP);
    return { name: `${rowName(row)}${column + 1}`, column, row, window: { left: x, right: x + width, bottom: y - height, top: y } };
  }).filter(({ window }) => !space.isFree(window) || inside({ x: (window.left + window.right) / 2, y: (window.bottom + window.top) / 2 }));
}

function count(length: number, window: number): number {
  return Math.max(1, Math.ceil((length - OVERLAP) / (window - OVERLAP)));
}

function spanned(tiles: number, window: number): number {
  return tiles * (window - OVERLAP) + OVERLAP;
}

/** A … Z, AA, AB … */
function rowName(row: number): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return row < 26 ? letter : rowName(Math.floor(row / 26) - 1) + letter;
}

/** Whether a point lies inside the outlines of the pattern, by the edges crossed on the way to the right. */
function insideTest(art: readonly Item[]): (point: Vec2) => boolean {
  const lines = art.filter((item) => item.kind === "path" && (item.pen === "outline" || item.pen === "opening"))
    .map((item) => (item.kind === "path" ? flattenSegments(item.segments, 0.1) : []));
  const box = boxOfPoints(lines.flat());
  return ({ x, y }) => {
    if (x < box.left || x > box.right || y < box.bottom || y > box.top) return false;
    let crossings = 0;
    for (const points of lines) {
      points.forEach((b, i) => {
        const a = points[i - 1];
        if (a && a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) crossings++;
      });
    }
    return crossings % 2 === 1;
  };
}
