// At which scale does one block of the board fill the window by itself?

import type { Development } from "../../core/index";
import type { BlockName } from "./arrange";
import { type Board, type BoardOptions, board } from "./board";
import type { Box } from "../box";

/** Part of the window the block takes. */
const FULL = 0.94;
const ROUNDS = 4;

/** The board drawn so that this block fills a window of the options' size; `fit` is the board that fits it whole. Never smaller than that. */
export function blockAtFull(development: Development, options: BoardOptions, name: BlockName, fit: Board): Board {
  let drawn = fit;
  for (let round = 0; round < ROUNDS; round++) {
    const grow = FULL / fullness(drawn.blocks[name].bounds, options);
    const scale = Math.max(fit.scale, drawn.scale * grow);
    if (Math.abs(scale - drawn.scale) < 0.01 * scale) break;
    drawn = board(development, { ...options, at: { scale, arrangement: fit.arrangement } });
  }
  return drawn;
}

/** Greater than 1 where the block is larger than the window. */
function fullness({ left, right, bottom, top }: Box, { width, height }: BoardOptions): number {
  return Math.max((right - left) / width, (top - bottom) / height);
}
