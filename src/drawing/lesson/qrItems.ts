// A two-dimensional code on a sheet, as areas of ink: dark modules that touch are one area, so that no hair of paper shows between them.

import type { Vec2 } from "../../core/index";
import type { Box } from "../box";
import type { SurfaceItem } from "../display";

/** Modules kept white all round (ISO/IEC 18004, 5.3.8: four). */
export const QUIET = 4;

/** A module is printed no smaller than this, mm, so that a telephone's camera tells it from the next (common practice), a code no smaller than that. */
const MODULE = 0.5, SMALLEST = 30;

/** How large a square the code takes with its quiet zone, mm. */
export function codeSide(modules: readonly (readonly boolean[])[]): number {
  return Math.max(SMALLEST, MODULE * (modules.length + 2 * QUIET));
}

/**
 * The code in the largest square in the middle of the box, its quiet zone inside it. `modules`: rows from the top, true for dark.
 * None for no modules.
 */
export function qrItems(modules: readonly (readonly boolean[])[], { left, right, bottom, top }: Box): SurfaceItem[] {
  if (modules.length === 0) return [];
  const size = Math.min(right - left, top - bottom) / (modules.length + 2 * QUIET);
  const origin = { x: (left + right - size * modules.length) / 2, y: (top + bottom + size * modules.length) / 2 };
  const at = (column: number, row: number): Vec2 => ({ x: origin.x + column * size, y: origin.y - row * size });
  const loops = outlines(modules).map((corners) => corners.map(([column, row]) => at(column, row)));
  return [{ kind: "surface", side: "ink", loops }];
}

type Corner = readonly [column: number, row: number];

/** The outlines of the dark areas, corner by corner; holes are outlines too. */
function outlines(modules: readonly (readonly boolean[])[]): Corner[][] {
  const dark = (column: number, row: number) => modules[row]?.[column] === true;
  // Every side between dark and light, walked with the dark on its right hand: from each corner where it leads.
  const sides = new Map<string, Corner[]>();
  const side = (from: Corner, to: Corner) => sides.set(from.join(), [...(sides.get(from.join()) ?? []), to]);
  modules.forEach((cells, row) => cells.forEach((_, column) => {
    if (!dark(column, row)) return;
    if (!dark(column, row - 1)) side([column, row], [column + 1, row]);
    if (!dark(column + 1, row)) side([column + 1, row], [column + 1, row + 1]);
    if (!dark(column, row + 1)) side([column + 1, row + 1], [column, row + 1]);
    if (!dark(column - 1, row)) side([column, row + 1], [column, row]);
  }));
  const found: Corner[][] = [];
  for (const start of sides.keys()) {
    while (sides.get(start)?.length) {
      const from = start.split(",").map(Number);
      const loop: Corner[] = [[from[0] ?? 0, from[1] ?? 0]];
      for (let next = sides.get(start)?.pop(); next; next = sides.get(next.join())?.pop()) loop.push(next);
      found.push(loop.slice(0, -1).filter((corner, i, all) => !between(all.at(i - 1), corner, all[(i + 1) % all.length])));
    }
  }
  return found;
}

/** Whether a corner lies on the straight between its neighbours. */
function between(before: Corner | undefined, [column, row]: Corner, after: Corner | undefined): boolean {
  return (before?.[0] === column && after?.[0] === column) || (before?.[1] === row && after?.[1] === row);
}
