// Where is the shortest or the longest element? Ends only: an opening does not make an element short.

import { TURN, angleBetween } from "../numeric/angle";
import { bisect } from "../numeric/bisect";
import { cleanAngle } from "../numeric/cleanAngle";
import { ANGLE_NOISE, NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter } from "../cut/cutter";
import { directionAlong } from "../trim/edge";
import { type Span, spansOf } from "../trim/spans";
import { endHeights } from "./endHeights";

/** Direction of the back in radians. */
const BACK = Math.PI;
/** Parts of a span looked at one by one: two turns of the length within one part are not told apart. */
const PARTS = 12;

/** A place, or a stretch of the girth, of one element length. */
interface Extreme {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/**
 * θ (radians, [0, 2π)) of the shortest or longest element of a pipe with these end cutters. Where the same length
 * stands over a stretch of the girth its middle is taken; of several equal places the one nearest the back, then the
 * one nearer the left (common practice: the seam out of sight).
 */
export function extremeElement(pipe: Pipe, endCutters: readonly Cutter[], which: "shortest" | "longest"): number {
  const sign = which === "shortest" ? 1 : -1;
  const extremes = spansOf(pipe, endCutters, 0).flatMap((span) => extremesOf(pipe, endCutters, span));
  const best = Math.min(...extremes.map(({ length }) => sign * length));
  const noise = 100 * NOISE * pipeSize(pipe);
  const equal = extremes.filter(({ length }) => sign * length - best <= noise);
  const places = runsOf(equal).map(middleOf);
  places.sort((a, b) => {
    const nearer = angleBetween(a, BACK) - angleBetween(b, BACK);
    return Math.abs(nearer) > ANGLE_NOISE ? nearer : b - a;
  });
  return places[0] ?? BACK;
}

/** Candidates of a span: both borders, the places where the length turns, and the whole span when it is level. */
function extremesOf(pipe: Pipe, cutters: readonly Cutter[], span: Span): Extreme[] {
  const length = (theta: number): number => {
    const ends = endHeights(cutters, span, theta);
    return ends ? ends.top - ends.bottom : 0;
  };
  const places = Array.from({ length: PARTS + 1 }, (_, i) => span.from + ((span.to - span.from) * i) / PARTS);
  const lengths = places.map(length);
  const spread = Math.max(...lengths) - Math.min(...lengths);
  if (spread <= 10 * NOISE * pipeSize(pipe)) return [{ from: span.from, to: span.to, length: lengths[PARTS >> 1] ?? 0 }];
  const turns = places.slice(1).flatMap((to, i) => turningPlace(pipe, cutters, span, places[i] ?? to, to));
  return [span.from, span.to, ...turns].map((theta) => ({ from: theta, to: theta, length: length(theta) }));
}

/** Where the length turns between two places of a span, if it does. */
function turningPlace(pipe: Pipe, cutters: readonly Cutter[], span: Span, from: number, to: number): number[] {
  const slope = (theta: number): number => {
    const first = span.stretches[0];
    const last = span.stretches.at(-1);
    if (!first || !last) return 0;
    const low = directionAlong(pipe, cutters, first.fromFace, theta, 1);
    const high = directionAlong(pipe, cutters, last.toFace, theta, 1);
    return high.dz * low.ds - low.dz * high.ds;
  };
  const [a, b] = [slope(from), slope(to)];
  if (a === 0) return [from];
  return a * b < 0 ? [bisect(slope, from, to)] : [];
}

/** Equal extremes that touch, joined; a run over the end of the turn goes on at its beginning. */
function runsOf(extremes: readonly Extreme[]): Extreme[] {
  const runs: Extreme[] = [];
  for (const next of [...extremes].sort((a, b) => a.from - b.from)) {
    const last = runs.at(-1);
    if (last && next.from - last.to <= ANGLE_NOISE) runs[runs.length - 1] = { ...last, to: Math.max(last.to, next.to) };
    else runs.push(next);
  }
  const first = runs[0];
  const last = runs.at(-1);
  if (first && last && first !== last && first.from + TURN - last.to <= ANGLE_NOISE) {
    runs.pop();
    runs[0] = { ...first, from: last.from - TURN };
  }
  return runs;
}

function middleOf({ from, to }: Extreme): number {
  if (to - from >= TURN - ANGLE_NOISE) return BACK;
  return cleanAngle((from + to) / 2);
}
