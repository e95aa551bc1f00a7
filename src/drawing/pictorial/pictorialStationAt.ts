// Which station does a pointer mean on a pictorial view? The nearest element of the wall it is on, the near wall before the far one.

import type { Vec2 } from "../../core/index";
import type { Pictorial, PictorialWall } from "./pictorial";

/** The index of the station; null beside the piece. */
export function pictorialStationAt({ walls, axis }: Pictorial, point: Vec2): number | null {
  const wall = walls.findLast(({ loops, feet }) => feet.length > 0 && isInside(loops, point));
  return wall ? nearest(wall, axis, point) : null;
}

function nearest({ feet }: PictorialWall, axis: Vec2, point: Vec2): number | null {
  const length = Math.hypot(axis.x, axis.y);
  let best: number | null = null;
  let least = Infinity;
  for (const { station, foot } of feet) {
    const x = point.x - foot.x, y = point.y - foot.y;
    // Seen along the axis an element is a point.
    const away = length > 1e-9 ? Math.abs(x * axis.y - y * axis.x) / length : Math.hypot(x, y);
    if (away < least) [best, least] = [station, away];
  }
  return best;
}

/** Whether a ray to the right meets the loops an odd number of times. */
function isInside(loops: readonly (readonly Vec2[])[], { x, y }: Vec2): boolean {
  let inside = false;
  for (const loop of loops) {
    loop.forEach((to, i) => {
      const from = loop.at(i - 1) ?? to;
      if (from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
    });
  }
  return inside;
}
