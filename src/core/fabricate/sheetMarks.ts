// Marks of the whole sheet: the arrow to the top, the way it is rolled, where the seam's edges meet each other.

import { TURN } from "../numeric/angle";
import { NOISE } from "../numeric/tolerance";
import { elementAt } from "../part/pieceElement";
import type { Piece } from "../part/pipePiece";
import type { Loop } from "../unroll/pattern";
import { type Mark, lineBetween } from "./mark";
import type { Layout } from "./sheetElement";

/** Arrows take at most this share of the girth and of the stretch they stand on, and at most this many mm. */
const GIRTH_SHARE = 0.2;
const STRETCH_SHARE = 0.3;
const LONGEST = 60;

/** The arrow of rolling runs this far under the foot of the other, as a share of its length. */
const UNDER = 0.15;

/** So many places along the girth are tried; none nearer to a quarter line than this share of the girth. */
const PLACES = 24;
const OFF_QUARTERS = 1 / 60;

/** Not in the middle, so that the two edges cannot be matched upside down. */
const MATCH = 1 / 3;

/** Shares of an arrow's width that are tried, the next where the sheet has no room for the one before. */
const NARROWER = [1, 1 / 4, 1 / 16];

/** Arrows where the sheet is highest without an opening under them, off the quarter lines; the rolling arrow only for a blank. None on a sheet too narrow for any. */
export function arrowMarks(piece: Piece, { setBack, opposite }: Layout, rolled: boolean): Mark[] {
  const { girth } = piece.pattern;
  const widest = Math.min(LONGEST, GIRTH_SHARE * girth);
  for (const width of NARROWER.map((share) => share * widest)) {
    const best = highestPlace(piece, width / 2, setBack);
    if (best) return arrowsAt({ ...best, x: opposite ? girth - best.x : best.x }, width, rolled);
  }
  return [];
}

/** A stretch of the sheet at x. */
interface Place {
  readonly x: number;
  readonly from: number;
  readonly to: number;
}

/** The longest stretch kept over `half` mm to both sides, the set-back seam left out. */
function highestPlace(piece: Piece, half: number, setBack: number): Place | null {
  const { girth } = piece.pattern;
  let best: Place | null = null;
  for (let k = 0; k < PLACES; k++) {
    const x = half + ((k + 0.5) / PLACES) * (girth - 2 * half);
    if (besideQuarter(piece, x) || x - half < setBack || x + half > girth - setBack) continue;
    for (const { from, to } of commonStretches(piece, [x - half, x, x + half])) if (to - from > (1 + NOISE) * (best ? best.to - best.from : 0)) best = { x, from, to };
  }
  return best;
}

function arrowsAt({ x, from, to }: Place, width: number, rolled: boolean): Mark[] {
  const size = Math.min(width, STRETCH_SHARE * (to - from));
  const foot = (from + to - size) / 2;
  const top: Mark = { kind: "top", line: lineBetween({ x, y: foot }, { x, y: foot + size }) };
  if (!rolled) return [top];
  const y = foot - UNDER * size;
  return [top, { kind: "rolling", line: lineBetween({ x: x - size / 2, y }, { x: x + size / 2, y }) }];
}

function besideQuarter({ pattern: { girth, seam, towards } }: Piece, x: number): boolean {
  const quarters = (4 * x) / girth + (4 * towards * seam) / TURN;
  return Math.abs(quarters - Math.round(quarters)) < 4 * OFF_QUARTERS;
}

/** What is kept at all of these places of the girth. */
function commonStretches(piece: Piece, places: readonly number[]): { from: number; to: number }[] {
  const kept = places.map((place) => {
    const { before, after } = elementAt(piece, place);
    return before.flatMap((a) => after.map((b) => overlap(a, b))).filter(({ from, to }) => from < to);
  });
  return kept.reduce((common, next) => common.flatMap((a) => next.map((b) => overlap(a, b))).filter(({ from, to }) => from < to));
}

function overlap(a: { from: number; to: number }, b: { from: number; to: number }): { from: number; to: number } {
  return { from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) };
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
