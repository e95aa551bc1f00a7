// The board while something else is drawn along the far edge of the pattern: the station numbers that ride over that edge are left
// out; they stand again in the row along the stretch-out line.

import type { Board } from "./board";
import type { Item } from "../display";
import { fromSheet } from "../place";

/** The items of a board but for the station numbers over the far edge of its pattern. */
export function withoutEdgeNumbers({ items, blocks: { pattern: { bounds, place } } }: Board): readonly Item[] {
  return items.filter((item) => {
    if (item.kind !== "text" || item.ref?.station === undefined) return true;
    const { x, y } = item.at;
    const within = x >= bounds.left && x <= bounds.right && y >= bounds.bottom && y <= bounds.top;
    return !within || fromSheet(place, item.at).y < 0;
  });
}
