// Which places of a pattern show something? A board of square cells, each marked when a line, a letter or the inside of what is cut
// may touch it, and sums over it, so that a window is asked in no time.

import { type Vec2, flattenSegments } from "../../core/index";
import { boundsOfItem } from "../bounds";
import type { Box } from "../box";
import type { Item } from "../display";
import type { Tiled } from "./tiled";

export interface Coverage {
  /** Whether anything lies in the box, or within a cell of it. */
  isCovered(box: Box): boolean;
}

/** Size of a cell, mm, and the most cells in one direction. */
const CELL = 2, MOST = 1000;

/** Distance of straight pieces from their curve, mm. */
const COARSE = 0.1;

interface Cells {
  readonly origin: Vec2;
  readonly size: number;
  readonly columns: number;
  readonly rows: number;
  readonly marks: Uint8Array;
}

/** The places covered by a drawing and by the inside of its outlines, to a cell of 2 mm or a thousandth of the whole. */
export function coverageOf({ art, bounds, outlines }: Tiled): Coverage {
  const width = bounds.right - bounds.left, height = bounds.top - bounds.bottom;
  const size = Math.max(CELL, width / MOST, height / MOST);
  const columns = Math.floor(width / size) + 1, rows = Math.floor(height / size) + 1;
  const cells: Cells = { origin: { x: bounds.left, y: bounds.bottom }, size, columns, rows, marks: new Uint8Array(columns * rows) };
  for (const item of art) markItem(cells, item);
  fill(cells, outlines.map((segments) => flattenSegments(segments, COARSE)));
  const sums = sumsOf(cells);
  return { isCovered: (box) => count(cells, sums, box) > 0 };
}

function markItem(cells: Cells, item: Item): void {
  if (item.kind !== "path") return markBox(cells, boundsOfItem(item));
  const points = flattenSegments(item.segments, COARSE);
  points.forEach((b, i) => {
    const a = points[i - 1];
    if (a) markLine(cells, a, b);
  });
}

function markBox(cells: Cells, { left, right, bottom, top }: Box): void {
  const { columns, marks } = cells;
  const [c0, c1, r0, r1] = [column(cells, left), column(cells, right), row(cells, bottom), row(cells, top)];
  for (let r = r0; r <= r1; r++) marks.fill(1, r * columns + c0, r * columns + c1 + 1);
}

/** Points along the line closer than half a cell, each with its cell. */
function markLine(cells: Cells, a: Vec2, b: Vec2): void {
  const steps = Math.max(1, Math.ceil((2 * Math.hypot(b.x - a.x, b.y - a.y)) / cells.size));
  for (let i = 0; i <= steps; i++) {
    const x = a.x + ((b.x - a.x) * i) / steps, y = a.y + ((b.y - a.y) * i) / steps;
    cells.marks[row(cells, y) * cells.columns + column(cells, x)] = 1;
  }
}

/** The inside by the even-odd rule, along the middle of each row. */
function fill(cells: Cells, outlines: readonly (readonly Vec2[])[]): void {
  const { origin, size, columns, rows, marks } = cells;
  const crossings: number[][] = Array.from({ length: rows }, () => []);
  for (const points of outlines) {
    points.forEach((b, i) => {
      const a = points[i - 1];
      if (!a || a.y === b.y) return;
      const low = Math.min(a.y, b.y), high = Math.max(a.y, b.y);
      const first = Math.ceil((low - origin.y) / size - 0.5), last = Math.ceil((high - origin.y) / size - 0.5) - 1;
      for (let r = Math.max(0, first); r <= Math.min(rows - 1, last); r++) {
        const y = origin.y + (r + 0.5) * size;
        crossings[r]?.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
      }
    });
  }
  crossings.forEach((places, r) => {
    places.sort((a, b) => a - b);
    for (let i = 0; i + 1 < places.length; i += 2) marks.fill(1, r * columns + column(cells, places[i] ?? 0), r * columns + column(cells, places[i + 1] ?? 0) + 1);
  });
}

/** sums[r][c]: marks in the rows below r and the columns before c. */
function sumsOf({ columns, rows, marks }: Cells): Uint32Array {
  const sums = new Uint32Array((columns + 1) * (rows + 1));
  for (let r = 0; r < rows; r++) {
    let sum = 0;
    for (let c = 0; c < columns; c++) {
      sum += marks[r * columns + c] ?? 0;
      sums[(r + 1) * (columns + 1) + c + 1] = (sums[r * (columns + 1) + c + 1] ?? 0) + sum;
    }
  }
  return sums;
}

function count(cells: Cells, sums: Uint32Array, { left, right, bottom, top }: Box): number {
  const { origin, size, columns, rows } = cells;
  if (right < origin.x || top < origin.y || left > origin.x + columns * size || bottom > origin.y + rows * size) return 0;
  const [c0, c1, r0, r1] = [column(cells, left), column(cells, right) + 1, row(cells, bottom), row(cells, top) + 1];
  const at = (r: number, c: number) => sums[r * (columns + 1) + c] ?? 0;
  return at(r1, c1) - at(r0, c1) - at(r1, c0) + at(r0, c0);
}

function column({ origin, size, columns }: Cells, x: number): number {
  return Math.min(columns - 1, Math.max(0, Math.floor((x - origin.x) / size)));
}

function row({ origin, size, rows }: Cells, y: number): number {
  return Math.min(rows - 1, Math.max(0, Math.floor((y - origin.y) / size)));
}
