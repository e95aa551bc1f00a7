// At which scale, and in which arrangement, does a drawing just fill a window? Lines grow with the scale, lettering does not: the
// sizes of the blocks are taken to grow evenly between two drawings, and the outcome is drawn, measured and corrected.

import { type Arrangement, type Arranged, type BlockName, arrangeBlocks } from "./arrange";
import { boundsOf } from "../bounds";
import type { Box } from "../box";
import type { Item } from "../display";

export type Blocks = Readonly<Record<BlockName, readonly Item[]>>;

/** Draws each block about its own origin at a scale (sheet mm a model mm). */
export type Draw = (scale: number) => Blocks;

export interface Fitted extends Arranged {
  readonly scale: number;
  readonly arrangement: Arrangement;
  readonly blocks: Blocks;
}

export interface FitSetting {
  readonly attitude: "upright" | "lying";
  readonly projection: "first" | "third";
  /** Room between blocks, sheet mm. */
  readonly between: number;
  /** Sheet mm. */
  readonly window: { readonly width: number; readonly height: number };
  /** Whether the pattern may stand apart from the views. */
  readonly apart: boolean;
  /** Below this scale the lettering would smother the drawing. */
  readonly leastScale: number;
}

interface Drawn {
  readonly scale: number;
  readonly blocks: Blocks;
  readonly boxes: Readonly<Record<BlockName, Box>>;
}

/** How many times larger the drawing must get before the pattern leaves its projection with the front view. */
const WORTH_APART = 1.3;

const ROUNDS = 5;

/** A drawing that fills this part of the window is full. */
const FULL = 0.97;

/**
 * The drawing at the largest scale at which it keeps inside the window, within a few per cent. When that is less than the least
 * scale, as for a window that much larger.
 */
export function scaleToFit(draw: Draw, asked: FitSetting): Fitted {
  const drawAt = (scale: number): Drawn => {
    const blocks = draw(scale);
    return { scale, blocks, boxes: boxesOf(blocks) };
  };
  let last = drawAt(Math.max(1, asked.leastScale));
  let now = drawAt(Math.max(asked.leastScale, last.scale / fullness(last, "projection", asked)));
  const setting = roomy(last, now, asked);
  const arrangement = bestArrangement(last, now, setting);
  let best: Drawn | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    const full = fullness(now, arrangement, setting);
    if (full <= 1 && (!best || now.scale > best.scale)) best = now;
    if (full <= 1 && full > FULL) break;
    const scale = fittingScale(last, now, arrangement, setting) * (full > 1 ? 0.995 ** round : 1);
    if (Math.abs(scale - now.scale) < 1e-3 * scale && full <= 1) break;
    if (Math.abs(now.scale - scale) < Math.abs(last.scale - scale) || last.scale === now.scale) last = now;
    now = drawAt(scale);
  }
  const { scale, blocks, boxes } = best ?? now;
  return { scale, arrangement, blocks, ...arranged(boxes, arrangement, setting) };
}

/** The drawing at a given scale and in a given arrangement, whatever the room. */
export function drawnAtScale(
  draw: Draw, scale: number, arrangement: Arrangement, { attitude, projection, between }: Pick<FitSetting, "attitude" | "projection" | "between">,
): Fitted {
  const blocks = draw(scale);
  return { scale, arrangement, blocks, ...arrangeBlocks(boxesOf(blocks), arrangement, attitude, projection, between) };
}

function boxesOf(blocks: Blocks): Drawn["boxes"] {
  return { front: boundsOf(blocks.front), top: boundsOf(blocks.top), side: boundsOf(blocks.side), pattern: boundsOf(blocks.pattern) };
}

/** The setting with a window large enough for the least scale, in the shape asked for. */
function roomy(a: Drawn, b: Drawn, asked: FitSetting): FitSetting {
  let setting = asked;
  for (let round = 0; round < 40; round++) {
    if (fittingScale(a, b, bestArrangement(a, b, setting), setting) >= setting.leastScale) break;
    const { width, height } = setting.window;
    setting = { ...setting, window: { width: width * 1.1, height: height * 1.1 } };
  }
  return setting;
}

function bestArrangement(a: Drawn, b: Drawn, setting: FitSetting): Arrangement {
  let best: Arrangement = "projection";
  let wanted = fittingScale(a, b, best, setting) * WORTH_APART;
  for (const other of setting.apart ? (["under", "beside"] as const) : []) {
    const scale = fittingScale(a, b, other, setting);
    if (scale > wanted) [best, wanted] = [other, scale];
  }
  return best;
}

/** The scale at which the blocks just fit if each side of each box grows evenly with the scale, as from `a` to `b`. */
function fittingScale(a: Drawn, b: Drawn, arrangement: Arrangement, setting: FitSetting): number {
  const part = (scale: number) => (a.scale === b.scale ? 0 : (scale - a.scale) / (b.scale - a.scale));
  const mix = (p: Box, q: Box, u: number): Box => ({
    left: p.left + u * (q.left - p.left), right: p.right + u * (q.right - p.right), bottom: p.bottom + u * (q.bottom - p.bottom), top: p.top + u * (q.top - p.top),
  });
  const isFull = (scale: number) => {
    const box = (name: BlockName) => mix(a.boxes[name], b.boxes[name], part(scale));
    const boxes = { front: box("front"), top: box("top"), side: box("side"), pattern: box("pattern") };
    return fullness({ scale, boxes }, arrangement, setting) > 0.995;
  };
  let low = b.scale / 4, high = b.scale * 4;
  for (let round = 0; round < 24; round++) {
    const middle = (low + high) / 2;
    if (isFull(middle)) high = middle;
    else low = middle;
  }
  return low;
}

/** Greatest of width and height as a part of the window's. */
function fullness({ boxes }: Pick<Drawn, "scale" | "boxes">, arrangement: Arrangement, setting: FitSetting): number {
  const { left, right, bottom, top } = arranged(boxes, arrangement, setting).bounds;
  return Math.max((right - left) / setting.window.width, (top - bottom) / setting.window.height);
}

function arranged(boxes: Drawn["boxes"], arrangement: Arrangement, { attitude, projection, between }: FitSetting): Arranged {
  return arrangeBlocks(boxes, arrangement, attitude, projection, between);
}
