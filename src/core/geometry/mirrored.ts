// A closed chain seen from the other side.

import { type Segment, reverseSegment } from "./segment";
import type { Vec2 } from "./vector";

/** The chain with left and right changed about x = width / 2, drawn backwards so that it keeps its direction round. */
export function mirroredChain<S extends Segment>(segments: readonly S[], width: number): S[] {
  const flip = ({ x, y }: Vec2): Vec2 => ({ x: width - x, y });
  return segments.map((segment): S => {
    const ends = { from: flip(segment.from), to: flip(segment.to) };
    if (segment.kind === "cubic") return reverseSegment({ ...segment, ...ends, c1: flip(segment.c1), c2: flip(segment.c2) });
    if (segment.kind === "arc") return reverseSegment({ ...segment, ...ends, centre: flip(segment.centre), anticlockwise: !segment.anticlockwise });
    return reverseSegment({ ...segment, ...ends });
  }).reverse();
}
