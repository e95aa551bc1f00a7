// The loops of a pattern on the sheet.

import type { Loop, Segment } from "../../core/index";
import type { PathItem } from "../display";
import { type Place, segmentOnSheet } from "../place";
import { refOf } from "../view/viewGeometry";

/** Whole closed loops, as a cutter wants them. */
export function patternLoops(loops: readonly Loop[], place: Place): PathItem[] {
  return loops.map(({ kind, segments }) => ({
    kind: "path", pen: kind, closed: true, segments: segments.map((segment) => segmentOnSheet(place, segment)),
  }));
}

/** The loops in stretches of one feature each, so that each feature can light up. */
export function patternEdges(loops: readonly Loop[], place: Place): PathItem[] {
  return loops.flatMap((loop) => stretchesOf(loop).map(({ ref, segments, closed }): PathItem => ({
    kind: "path", pen: loop.kind, closed, ref, segments: segments.map((segment) => segmentOnSheet(place, segment)),
  })));
}

/** Consecutive segments of one owner, taken together. */
function stretchesOf({ segments }: Loop): { ref: ReturnType<typeof refOf>; segments: Segment[]; closed: boolean }[] {
  const key = (index: number) => JSON.stringify(segments[index % segments.length]?.owner);
  const start = segments.findIndex((_, i) => key(i) !== key(i + segments.length - 1));
  const stretches: { ref: ReturnType<typeof refOf>; segments: Segment[]; closed: boolean }[] = [];
  for (let i = 0; i < segments.length; i++) {
    const at = i + Math.max(0, start);
    const segment = segments[at % segments.length];
    if (!segment) continue;
    const last = stretches.at(-1);
    if (last && key(at) === key(at - 1)) last.segments.push(segment);
    else stretches.push({ ref: refOf(segment.owner), segments: [segment], closed: start < 0 });
  }
  return stretches;
}
