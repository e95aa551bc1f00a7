// What lies near a box? Things filed under the cells of a grid that their boxes touch.

import type { Box } from "./box";

export interface CellGrid<Thing> {
  /** Files a thing under every cell that its box touches. */
  add(thing: Thing, box: Box): void;
  /** Whether a thing filed under a cell that the box touches answers yes; each may be asked more than once. */
  some(box: Box, asks: (thing: Thing) => boolean): boolean;
}

/** Cells in each direction. */
const CELLS = 32;

/** Bounds without width or height are taken as so many mm. */
const LEAST = 1e-9;

/** A grid over `bounds`; what lies beyond is filed under the cells of its rim. */
export function cellGrid<Thing>({ left, right, bottom, top }: Box): CellGrid<Thing> {
  const cells: Thing[][] = [];
  const across = CELLS / Math.max(right - left, LEAST), up = CELLS / Math.max(top - bottom, LEAST);
  const column = (x: number) => cellOf((x - left) * across);
  const row = (y: number) => cellOf((y - bottom) * up);
  const add = (thing: Thing, box: Box): void => {
    const last = column(box.right), highest = row(box.top);
    for (let r = row(box.bottom); r <= highest; r++) for (let c = column(box.left); c <= last; c++) (cells[r * CELLS + c] ??= []).push(thing);
  };
  const some = (box: Box, asks: (thing: Thing) => boolean): boolean => {
    const last = column(box.right), highest = row(box.top);
    for (let r = row(box.bottom); r <= highest; r++) for (let c = column(box.left); c <= last; c++) if (cells[r * CELLS + c]?.some(asks)) return true;
    return false;
  };
  return { add, some };
}

function cellOf(place: number): number {
  return Math.max(0, Math.min(CELLS - 1, Math.floor(place)));
}
