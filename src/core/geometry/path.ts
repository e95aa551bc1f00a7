// Chains of segments: length, signed area.

import { type Segment, segmentArea, segmentLength } from "./segment";

/** Length of a chain of segments in mm. */
export function pathLength(segments: readonly Segment[]): number {
  return segments.reduce((sum, segment) => sum + segmentLength(segment), 0);
}

/** Area in mm² enclosed by a closed chain; positive when it runs anticlockwise. */
export function pathArea(segments: readonly Segment[]): number {
  return segments.reduce((sum, segment) => sum + segmentArea(segment), 0);
}
