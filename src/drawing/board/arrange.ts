// Where do the blocks stand to each other? As on paper: views in projection, the pattern in projection with the front view or,
// where that leaves the drawing too small, apart from it.

import { type Box, joinBoxes, moveBox } from "../box";
import type { Vec2 } from "../../core/index";

export type BlockName = "front" | "top" | "side" | "pattern";

/** projection: the pattern shares its heights with the front view. under, beside: the pattern stands apart from the views. */
export type Arrangement = "projection" | "under" | "beside";

export interface Arranged {
  /** Where each block's own origin falls. */
  readonly origins: Readonly<Record<BlockName, Vec2>>;
  readonly bounds: Box;
}

/**
 * Origins of the blocks for boxes given about each block's own origin; the front view's origin stays at (0, 0).
 * First angle: top view under the front view; third: over it. The side view stands to the right. The pattern of an upright pipe goes
 * to the right of all, at the front view's heights; that of a lying one over all, at the front view's places.
 */
export function arrangeBlocks(
  boxes: Readonly<Record<BlockName, Box>>, arrangement: Arrangement, attitude: "upright" | "lying", projection: "first" | "third", between: number,
): Arranged {
  const { front, top, side, pattern } = boxes;
  const views = {
    front: { x: 0, y: 0 },
    side: { x: front.right + between - side.left, y: 0 },
    top: { x: 0, y: projection === "first" ? front.bottom - between - top.top : front.top + between - top.bottom },
  };
  const block = (["front", "side", "top"] as const).map((name) => moveBox(boxes[name], views[name])).reduce(joinBoxes);
  const origin = patternOrigin();
  return { origins: { ...views, pattern: origin }, bounds: joinBoxes(block, moveBox(pattern, origin)) };

  function patternOrigin(): Vec2 {
    const middle = { x: (block.left + block.right - pattern.left - pattern.right) / 2, y: (block.bottom + block.top - pattern.bottom - pattern.top) / 2 };
    if (arrangement === "under") return { x: middle.x, y: block.bottom - between - pattern.top };
    if (arrangement === "beside") return { x: block.right + between - pattern.left, y: middle.y };
    if (attitude === "upright") return { x: views.side.x + side.right + between - pattern.left, y: 0 };
    const over = Math.max(front.top, side.top, projection === "first" ? -Infinity : views.top.y + top.top);
    return { x: 0, y: over + between - pattern.bottom };
  }
}
