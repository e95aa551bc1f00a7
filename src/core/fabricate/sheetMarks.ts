// Marks of the whole sheet: the arrow to the top, the way it is rolled, where the seam's edges meet each other.

import type { Piece } from "../part/pipePiece";
import type { Loop } from "../unroll/pattern";
import type { Layout } from "./elementMarks";
import { type Mark, lineBetween } from "./mark";

/** Arrows take at most this share of the stretch they stand on, and at most this many mm. */
const SHARE = 0.3;
const LONGEST = 60;

/** Not in the middle, so that the two edges cannot be matched upside down. */
const MATCH = 1 / 3;

/** Arrows on the longest kept stretch of all stations; the rolling arrow only for a blank. */
export function arrowMarks({ stations, pattern }: Piece, { opposite }: Layout, rolled: boolean): Mark[] {
  let best = { x: 0, from: 0, to: 0 };
  for (const { girth, before, after } of stations) {
    for (const { from, to } of [...before, ...after]) if (to - from > best.to - best.from) best = { x: girth, from, to };
  }
  const size = Math.min(LONGEST, SHARE * (best.to - best.from), SHARE * pattern.girth);
  const middle = (best.from + best.to) / 2;
  const inside = Math.max(size, Math.min(pattern.girth - size, best.x));
  const x = opposite ? pattern.girth - inside : inside;
  const top: Mark = { kind: "top", line: lineBetween({ x, y: middle - size / 2 }, { x, y: middle + size / 2 }) };
  if (!rolled) return [top];
  return [top, { kind: "rolling", line: lineBetween({ x: x - size / 2, y: middle }, { x: x + size / 2, y: middle }) }];
}

/** "seam" at one height of both edges of the seam, on its longest stretch. */
export function seamMatchMarks(net: readonly Loop[], girth: number): Mark[] {
  const edges = net.flatMap(({ segments }) => segments.filter(({ owner }) => owner.kind === "seam"));
  const longest = (start: boolean) => edges.filter(({ from }) => from.x < girth / 2 === start)
    .reduce<{ x: number; low: number; high: number } | null>((best, { from, to }) => {
      const one = { x: from.x, low: Math.min(from.y, to.y), high: Math.max(from.y, to.y) };
      return best && best.high - best.low >= one.high - one.low ? best : one;
    }, null);
  const [start, end] = [longest(true), longest(false)];
  if (!start || !end) return [];
  const y = start.low + MATCH * (start.high - start.low);
  return [
    { kind: "match", id: "seam", at: { x: start.x, y }, into: { x: 1, y: 0 } },
    { kind: "match", id: "seam", at: { x: end.x, y }, into: { x: -1, y: 0 } },
  ];
}
