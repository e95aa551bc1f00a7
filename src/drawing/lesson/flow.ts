// Blocks one under the other, then in the next column, then on the next page.

import type { Box } from "../box";
import type { Item } from "../display";
import type { Shape } from "../sheets/setBeside";

/** The items of each page; a block larger than the room stands alone at its top left. */
export function flow(blocks: readonly Shape[], { left, right, bottom, top }: Box, between: number): Item[][] {
  const pages: Item[][] = [[]];
  let x = left, y = top, wide = 0;
  for (const { width, height, at } of blocks) {
    if (y < top && y - height < bottom) [x, y, wide] = [x + wide + between, top, 0];
    if (x > left && x + width > right) {
      pages.push([]);
      [x, y, wide] = [left, top, 0];
    }
    pages.at(-1)?.push(...at({ x, y }));
    y -= height + between;
    wide = Math.max(wide, width);
  }
  return pages;
}
