// Straight lines that go on straight, and arcs that go on round the same centre, as one.

import { type Segment, arcSweep } from "../../core/index";

/** The chain with fewer segments; `noise` in mm is how far a joint may lie off the line or circle. */
export function mergeSegments(segments: readonly Segment[], noise: number): Segment[] {
  const merged: Segment[] = [];
  for (const segment of segments) {
    const last = merged.at(-1);
    const joined = last && joinedSegment(last, segment, noise);
    if (joined) merged[merged.length - 1] = joined;
    else merged.push(segment);
  }
  return merged;
}

function joinedSegment(a: Segment, b: Segment, noise: number): Segment | null {
  if (a.kind === "line" && b.kind === "line") {
    const dx = b.to.x - a.from.x, dy = b.to.y - a.from.y;
    const length = Math.hypot(dx, dy);
    const along = (a.to.x - a.from.x) * dx + (a.to.y - a.from.y) * dy;
    const off = Math.abs((a.to.x - a.from.x) * dy - (a.to.y - a.from.y) * dx);
    return along > 0 && along < length * length && off <= noise * length ? { kind: "line", from: a.from, to: b.to } : null;
  }
  if (a.kind !== "arc" || b.kind !== "arc" || a.anticlockwise !== b.anticlockwise) return null;
  const [one, two] = [arcSweep(a), arcSweep(b)];
  const apart = Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y) + Math.abs(one.radius - two.radius);
  const turn = Math.abs(one.sweep + two.sweep);
  if (apart > noise || turn > 2 * Math.PI + 1e-9) return null;
  const closes = turn > 2 * Math.PI - 1e-9;
  return { ...a, to: closes ? a.from : b.to };
}
