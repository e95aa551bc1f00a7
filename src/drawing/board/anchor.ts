// Looking more closely without losing the place: a point of the piece that is held at a place of the window while the board is drawn
// at another scale. Blocks move apart differently than they grow, so the point is held in the block it belongs to.

import type { Vec2 } from "../../core/index";
import type { BlockName } from "./arrange";
import type { Board } from "./board";
import type { Box } from "../box";
import { fromSheet, onSheet } from "../place";

export interface Anchor {
  readonly block: BlockName;
  /** In the block's own (model) coordinates, mm. */
  readonly point: Vec2;
}

const BLOCKS: readonly BlockName[] = ["pattern", "front", "top", "side"];

/** The point of the nearest block under a point of the sheet. */
export function anchorAt({ blocks }: Pick<Board, "blocks">, point: Vec2): Anchor {
  const [block] = [...BLOCKS].sort((a, b) => distanceTo(blocks[a].bounds, point) - distanceTo(blocks[b].bounds, point));
  if (!block) throw new RangeError("a board without blocks");
  return { block, point: fromSheet(blocks[block].place, point) };
}

/**
 * The part of the sheet that a window of `width` × `height` (sheet mm) shows when it holds the anchor at the place `at` (parts of its
 * width from the left and of its height from the top). Its middle stays over the drawing.
 */
export function windowOn({ blocks, bounds }: Pick<Board, "blocks" | "bounds">, { block, point }: Anchor, at: Vec2, { width, height }: { width: number; height: number }): Box {
  const held = onSheet(blocks[block].place, point);
  const x = within(held.x + (0.5 - at.x) * width, bounds.left, bounds.right);
  const y = within(held.y + (at.y - 0.5) * height, bounds.bottom, bounds.top);
  return { left: x - width / 2, right: x + width / 2, bottom: y - height / 2, top: y + height / 2 };
}

/** The middle of a block in its own coordinates. */
export function middleOf({ blocks }: Pick<Board, "blocks">, block: BlockName): Anchor {
  const { place, bounds: { left, right, bottom, top } } = blocks[block];
  return { block, point: fromSheet(place, { x: (left + right) / 2, y: (bottom + top) / 2 }) };
}

function within(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

function distanceTo({ left, right, bottom, top }: Box, { x, y }: Vec2): number {
  return Math.hypot(x - within(x, left, right), y - within(y, bottom, top));
}
