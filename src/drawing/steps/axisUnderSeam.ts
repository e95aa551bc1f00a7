// The stretches of an axis over which the seam is drawn: the finished drawing leaves the centre line out there, but the axis is drawn
// first, and whole.

import type { Board } from "../board/board";
import type { Item } from "../display";
import { fromSheet } from "../place";
import { stroke } from "../strokes";

/** Nearer to the axis than this, in mm of the piece, is on it. */
const ON_AXIS = 1e-6;

/** Centre lines under the seam, in every view that shows it on its axis. */
export function axisUnderSeam({ blocks: { front, top, side } }: Pick<Board, "blocks">): Item[] {
  return [front, top, side].flatMap(({ items, place }) => items.flatMap((item) => {
    if (item.kind !== "path" || item.pen !== "seam") return [];
    const onAxis = item.segments.every(({ from, to }) => [from, to].every((point) => Math.abs(fromSheet(place, point).x) < ON_AXIS));
    return onAxis ? item.segments.map(({ from, to }) => stroke("centre line", from, to)) : [];
  }));
}
