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
 * true place. Not possible where the chain is so hollow on that side that the curve would cross itself.
 */
export function offsetRun(run: readonly Segment[], width: number, tolerance: number): OffsetRun {
  let whole: Segment[] = [];
  for (const [i, segment] of run.entries()) {
    const moved = offsetSegment(segment, width, tolerance);
    if (!moved.ok) return moved;
    const last = run[i - 1];
    const next = last ? withCorner(whole, moved.segments, { last, segment, width, snap: SNAP * tolerance }) : [...moved.segments];
    if (!next) return { ok: false, at: segment.from };
    whole = next;
  }
  return { ok: true, segments: whole };
}

interface Corner {
  readonly last: Segment;
  readonly segment: Segment;
  readonly width: number;
  readonly snap: number;
}

/** Both moved sides of a corner as one chain; null when a closing corner swallows a side whole. */
function withCorner(before: readonly Segment[], after: readonly Segment[], { last, segment, width, snap }: Corner): Segment[] | null {
  const [end, start] = [before.at(-1), after[0]];
  if (!end || !start) return [...before, ...after];
  if (distance(end.to, start.from) <= snap) return [...before, { ...start, from: end.to }, ...after.slice(1)];
  const [arriving, leaving] = [segmentTangent(last, 1), segmentTangent(segment, 0)];
  const turn = arriving.x * leaving.y - arriving.y * leaving.x;
  if (turn * width > 0 || (turn === 0 && arriving.x * leaving.x + arriving.y * leaving.y < 0)) {
    const round: Segment = { kind: "arc", from: end.to, to: start.from, centre: segment.from, anticlockwise: width > 0 };
    return [...before, round, ...after];
  }
  return joinedAtCrossing(before, after)?.segments ?? null;
}
