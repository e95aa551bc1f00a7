// The root gap of a butt seam: half of it comes off each edge of the seam.

import { joinedAtCrossing } from "../geometry/chainCrossing";
import { flattenSegments } from "../geometry/flatten";
import type { Line } from "../geometry/segment";
import type { Vec2 } from "../geometry/vector";
import type { Cut } from "../job/job";
import type { Loop, PatternSegment } from "../unroll/pattern";
import { type AllowancePlace, type Run, runsOf } from "./place";

export type Gapped =
  | { readonly ok: true; readonly loops: readonly Loop[] }
  | { readonly ok: false; readonly at: Vec2 };

/** The loops of a pattern of `girth` mm with `gap` mm taken off the seam; refused where a piece or an opening is lost in the gap. */
export function withRootGap(loops: readonly Loop[], girth: number, gap: number, cuts: readonly Cut[]): Gapped {
  if (gap === 0) return { ok: true, loops };
  const left = gap / 2;
  const right = girth - gap / 2;
  const made: Loop[] = [];
  for (const loop of loops) {
    const runs = runsOf(loop.segments, girth, cuts);
    const segments = runs.some(({ place }) => isSeam(place)) ? setBack(runs, left, right) : loop.segments;
    const lost = segments ? outsideOf(segments, left, right) : loop.segments[0]?.from;
    if (!segments || lost) return { ok: false, at: lost ?? { x: 0, y: 0 } };
    made.push({ ...loop, segments });
  }
  return { ok: true, loops: made };
}

function isSeam(place: AllowancePlace | null): boolean {
  return place === "seam-start" || place === "seam-end";
}

/** Every run beside the seam cut off at the seam's new line, and the seam drawn between them; null when one never reaches it. */
function setBack(runs: readonly Run[], left: number, right: number): PatternSegment[] | null {
  const lineOf = ({ place }: Run): Line => upright(place === "seam-start" ? left : right, runs);
  const cut: (readonly PatternSegment[] | null)[] = runs.map((run, i) => {
    const [before, after] = [runs.at(i - 1), runs[(i + 1) % runs.length]];
    let segments: readonly PatternSegment[] | null = run.segments;
    if (isSeam(run.place)) return segments;
    if (before && isSeam(before.place)) segments = ownPart(joinedAtCrossing([lineOf(before)], segments)?.segments);
    if (segments && after && isSeam(after.place)) segments = ownPart(joinedAtCrossing(segments, [lineOf(after)])?.segments);
    return segments;
  });
  const loop: PatternSegment[] = [];
  for (const [i, run] of runs.entries()) {
    const own = cut[i];
    if (!own) return null;
    if (!isSeam(run.place)) loop.push(...own);
    else {
      const [from, to] = [cut.at(i - 1)?.at(-1)?.to, cut[(i + 1) % runs.length]?.[0]?.from];
      if (!from || !to) return null;
      loop.push({ kind: "line", from, to, owner: { kind: "seam" } });
    }
  }
  return loop;
}

/** What is left of the pattern's own segments when the seam's line has cut them. */
function ownPart(segments: readonly (PatternSegment | Line)[] | undefined): PatternSegment[] | null {
  return segments?.filter((segment) => "owner" in segment) ?? null;
}

function upright(x: number, runs: readonly Run[]): Line {
  const heights = runs.flatMap(({ segments }) => flattenSegments(segments, 1).map(({ y }) => y));
  return { kind: "line", from: { x, y: Math.min(...heights) - 1 }, to: { x, y: Math.max(...heights) + 1 } };
}

/** A point of the loop that lies in the gap, if any (a hair's breadth is forgiven). */
function outsideOf(segments: readonly PatternSegment[], left: number, right: number): Vec2 | undefined {
  const hair = 1e-6 * (right - left);
  return flattenSegments(segments, 0.01).find(({ x }) => x < left - hair || x > right + hair);
}
