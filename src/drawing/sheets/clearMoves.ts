// Where in its frame can a drawing of several blocks stand, clear of the title block in the corner?

import type { Vec2 } from "../../core/index";
import { type Box, boxesOverlap, growBox, moveBox } from "../box";
import { boxWithin } from "../boxWithin";

/** mm: what is nearer to a side than this lies on it. */
const NEAR = 1e-6;

/**
 * Ways to move blocks with these bounds inside a room, `air` mm clear of the corner: in the middle over it, or in the middle or at a
 * side, half way up, as high or as low as they go. None where they do not fit.
 */
export function clearMoves(blocks: readonly Box[], bounds: Box, inside: Box, corner: Box, air: number): Vec2[] {
  const middle = (inside.left + inside.right - bounds.left - bounds.right) / 2, left = inside.left - bounds.left, right = inside.right - bounds.right;
  const top = inside.top - bounds.top, upright = (inside.bottom + inside.top - bounds.bottom - bounds.top) / 2;
  const over = (corner.top + air + inside.top - bounds.bottom - bounds.top) / 2;
  const moves = [{ x: middle, y: over }, ...[middle, left, right].flatMap((x) => [upright, top, lowest(blocks, x, inside, corner, air)].map((y) => ({ x, y })))];
  return moves.filter((move) => {
    const box = moveBox(bounds, move);
    return boxWithin(box, growBox(inside, NEAR)) && !blocks.some((one) => boxesOverlap(growBox(moveBox(one, move), air - NEAR), corner));
  });
}

/** How far up the blocks are moved to stand at the foot of the room, what lies over the corner clear of it. */
function lowest(blocks: readonly Box[], x: number, inside: Box, corner: Box, air: number): number {
  return Math.max(...blocks.map((box) => (box.right + x > corner.left - air ? corner.top + air : inside.bottom) - box.bottom));
}
