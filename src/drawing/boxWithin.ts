import type { Box } from "./box";

/** Whether a box lies inside another; touching sides count. */
export function boxWithin(box: Box, { left, right, bottom, top }: Box): boolean {
  return box.left >= left && box.right <= right && box.bottom >= bottom && box.top <= top;
}
