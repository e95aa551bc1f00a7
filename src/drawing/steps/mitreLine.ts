// The line at 45° over which a measure is carried from the circle to the view that stands neither above, below nor beside it.

import type { Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import type { PathItem } from "../display";
import { stroke } from "../strokes";

export interface MitreLine {
  /** Where what comes square from a point of the circle meets the line. */
  over(point: Vec2): Vec2;
  /** The line itself, as far as the circle needs it. */
  readonly line: PathItem;
}

/** The 45° line of a board; it passes through the crossing of the axes of top and side view. `radius` in mm is that of the pipe. */
export function mitreLine({ blocks: { top, side, front }, views }: Pick<Board, "blocks" | "views">, projection: "first" | "third", radius: number): MitreLine {
  const at = { x: side.place.origin.x, y: top.place.origin.y };
  const way = projection === "first" ? -1 : 1;
  const reach = radius * front.place.scale;
  const upright = views.top.kind === "end-on";
  const on = (across: number): Vec2 => ({ x: at.x + across, y: at.y + way * across });
  return {
    over: ({ x, y }) => (upright ? on(way * (y - at.y)) : on(x - at.x)),
    line: stroke("projection", on(-reach), on(reach)),
  };
}
