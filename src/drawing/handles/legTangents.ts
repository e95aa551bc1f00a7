// Which way does a leg of a free profile leave its first point and arrive at its last?

import type { Leg, Vec2 } from "../../core/index";

export interface LegTangents {
  readonly leaving: Vec2;
  readonly arriving: Vec2;
}

/** Unit vectors of the leg that begins at `from`; null when it has no length or cannot be drawn. */
export function legTangents(from: Vec2, leg: Leg): LegTangents | null {
  const to: Vec2 = { x: leg.to.x, y: leg.to.z };
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(length > 0)) return null;
  const chord = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  if ("centre" in leg) {
    const way = leg.turn === "left" ? 1 : -1;
    const round = (point: Vec2): Vec2 => {
      const x = point.x - leg.centre.x, y = point.y - leg.centre.z;
      const radius = Math.hypot(x, y);
      return { x: (-way * y) / radius, y: (way * x) / radius };
    };
    return { leaving: round(from), arriving: round(to) };
  }
  if (!("radius" in leg)) return { leaving: chord, arriving: chord };
  const bend = Math.asin(Math.min(1, length / (2 * leg.radius)));
  const angle = (leg.turn === "left" ? 1 : -1) * (leg.long ? Math.PI - bend : bend);
  return { leaving: turned(chord, -angle), arriving: turned(chord, angle) };
}

function turned({ x, y }: Vec2, angle: number): Vec2 {
  const cos = Math.cos(angle), sin = Math.sin(angle);
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}
