// At which scale does an arrangement just fill a window? Lines grow with the scale, lettering does not, so the answer is taken in
// turns: draw, measure, correct.

import { type Arrangement, type Arranged, type BlockName, arrangeBlocks } from "./arrange";
import { boundsOf } from "./bounds";
import type { Box } from "./box";
import type { Item } from "./display";
import type { Metrics } from "./metrics";

export interface Fitted extends Arranged {
  readonly scale: number;
  readonly arrangement: Arrangement;
  readonly blocks: Readonly<Record<BlockName, readonly Item[]>>;
}

/** Draws each block about its own origin at a scale (sheet mm a model mm). */
export type Draw = (scale: number) => Readonly<Record<BlockName, readonly Item[]>>;

const ROUNDS = 7;

/** A drawing that fills this part of the window is full. */
const FULL = 0.985;

/**
 * The drawing at the largest scale at which it keeps inside the window (sheet mm), within a few per cent. When not even the
 * lettering fits, a drawing larger than the window.
 */
export function scaleToFit(
  draw: Draw, arrangement: Arrangement, attitude: "upright" | "lying", projection: "first" | "third", metrics: Metrics, window: Window,
): Fitted {
  const at = (scale: number): Fitted => {
    const blocks = draw(scale);
    const boxes = { front: boundsOf(blocks.front), top: boundsOf(blocks.top), side: boundsOf(blocks.side), pattern: boundsOf(blocks.pattern) };
    return { scale, arrangement, blocks, ...arrangeBlocks(boxes, arrangement, attitude, projection, metrics.between) };
  };
  let last = at(1);
  let now = at(1 / fullness(last.bounds, window));
  let best = now;
  for (let round = 0; round < ROUNDS; round++) {
    const full = fullness(now.bounds, window);
    if (full <= 1 && (now.scale > best.scale || fullness(best.bounds, window) > 1)) best = now;
    if (full <= 1 && full > FULL) break;
    const scale = nextScale(last, now, window);
    last = now;
    now = at(scale);
  }
  return best;
}

interface Window {
  readonly width: number;
  readonly height: number;
}

/** Greatest of width and height as a part of the window's. */
function fullness({ left, right, bottom, top }: Box, { width, height }: Window): number {
  return Math.max((right - left) / width, (top - bottom) / height);
}

/** Where both sizes, taken to grow evenly with the scale as they did from `a` to `b`, just fit; a little less for what does not grow evenly. */
function nextScale(a: Fitted, b: Fitted, window: Window): number {
  const along = (size: (box: Box) => number, room: number): number => {
    const growth = (size(b.bounds) - size(a.bounds)) / (b.scale - a.scale);
    const safe = growth > 0 ? growth : size(b.bounds) / b.scale;
    return b.scale + (room * 0.995 - size(b.bounds)) / safe;
  };
  const wanted = Math.min(along(({ left, right }) => right - left, window.width), along(({ bottom, top }) => top - bottom, window.height));
  return Math.max(wanted, b.scale / 3);
}
