// A run of edge moved sideways: the line at one true distance from it. Corners that open are rounded about the corner,
// corners that close are cut off where the two sides meet.

import { joinedAtCrossing } from "../geometry/chainCrossing";
import { offsetSegment } from "../geometry/offsetSegment";
import type { Segment } from "../geometry/segment";
import { segmentTangent } from "../geometry/segmentTangent";
import { type Vec2, distance } from "../geometry/vector";

/** The moved run, or the place where the edge is too hollow for it. */
export type OffsetRun =
  | { readonly ok: true; readonly segments: readonly Segment[] }
  | { readonly ok: false; readonly at: Vec2 };

/** Ends of neighbours nearer than this share of the tolerance are one point. */
const SNAP = 0.25;

/**
 * The curve at `width` mm to the right of a chain of segments (left when negative), within `tolerance` mm of its
 * true place; stretches too short for it between two hollow corners vanish. Not possible where the chain is so hollow on
 * that side that the curve would cross itself.
 */
export function offsetRun(run: readonly Segment[], width: number, tolerance: number): OffsetRun {
  const stretches: Stretch[] = [];
  for (const [i, segment] of run.entries()) {
    const moved = offsetSegment(segment, width, tolerance);
    if (!moved.ok) return moved;
    const [last, whole] = [run[i - 1], stretches.at(-1)];
    const more = last && whole && continued(whole.segments, moved.segments, { last, segment, width, snap: SNAP * tolerance });
    if (more) stretches[stretches.length - 1] = { ...whole, segments: more };
    else stretches.push({ corner: segment.from, segments: moved.segments });
  }
  return joinedStretches(stretches);
}

/** What lies between two closing corners, moved; it begins at the corner named. */
interface Stretch {
  readonly corner: Vec2;
  readonly segments: readonly Segment[];
}

interface Corner {
  readonly last: Segment;
  readonly segment: Segment;
  readonly width: number;
  readonly snap: number;
}

/** Both moved sides of a smooth place or an opening corner as one chain; null at a closing corner. */
function continued(before: readonly Segment[], after: readonly Segment[], { last, segment, width, snap }: Corner): Segment[] | null {
  const [end, start] = [before.at(-1), after[0]];
  if (!end || !start) return [...before, ...after];
  if (distance(end.to, start.from) <= snap) return [...before, { ...start, from: end.to }, ...after.slice(1)];
  const [arriving, leaving] = [segmentTangent(last, 1), segmentTangent(segment, 0)];
  const turn = arriving.x * leaving.y - arriving.y * leaving.x;
  const opens = turn * width > 0 || (turn === 0 && arriving.x * leaving.x + arriving.y * leaving.y < 0);
  if (!opens) return null;
  return [...before, { kind: "arc", from: end.to, to: start.from, centre: segment.from, anticlockwise: width > 0 }, ...after];
}

/** The stretches cut off where they meet; one that does not meet the line before it is swallowed by its neighbours. */
function joinedStretches([first, ...rest]: readonly Stretch[]): OffsetRun {
  let whole = first?.segments ?? [];
  let missed: Vec2 | null = null;
  for (const { corner, segments } of rest) {
    const joined = joinedAtCrossing(whole, segments);
    missed = joined ? null : (missed ?? corner);
    whole = joined?.segments ?? whole;
  }
  return missed ? { ok: false, at: missed } : { ok: true, segments: whole };
}
