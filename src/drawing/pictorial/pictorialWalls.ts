// Which stretches of the girth turn their inside to the viewer, which their outside? The rolled sheet is part of one circle: what
// shows its inside lies behind, what shows its outside before it, and neither covers itself. So two layers are a painter's order.

import type { Pipe, Vec3 } from "../../core/index";

/** A stretch of the girth in mm that shows one side. */
export interface Wall {
  readonly side: "inside" | "outside";
  readonly from: number;
  readonly to: number;
}

export interface Walls {
  /** From far to near. */
  readonly walls: readonly Wall[];
  /** mm along the girth: the elements where one side passes into the other. */
  readonly contours: readonly number[];
}

/** Sines below this are rounding: the line of sight runs along the axis, or the contour along the seam. */
const NOISE = 1e-9;

/** The walls of a sheet rolled up to `fraction`, seen from `viewer` (a unit vector in its frame); `towards` as in the pattern. */
export function wallsOf({ girth, radius }: Pipe, towards: 1 | -1, viewer: Vec3, fraction: number): Walls {
  const across = Math.hypot(viewer.x, viewer.y);
  const end = Math.PI * fraction;
  // The outside at the angle φ from the middle of the girth points along (sin φ, -towards · cos φ).
  const start = Math.atan2(towards * viewer.y, viewer.x);
  const angles = across < NOISE ? [] : [-2, -1, 0, 1, 2].map((k) => start + k * Math.PI).filter((angle) => Math.abs(angle) <= end + NOISE);
  const contours = fraction === 0 ? [] : angles.map((angle) => Math.min(girth, Math.max(0, girth / 2 + (angle * radius) / fraction)));
  const borders = [0, ...contours.filter((place) => place > NOISE * girth && place < girth * (1 - NOISE)), girth];
  const walls = borders.slice(1).map((to, i): Wall => {
    const from = borders[i] ?? 0;
    const middle = (((from + to - girth) / 2) * fraction) / radius;
    const facing = viewer.x * Math.sin(middle) - towards * viewer.y * Math.cos(middle);
    return { side: facing < -NOISE ? "inside" : "outside", from, to };
  });
  return { contours, walls: [...walls.filter(({ side }) => side === "inside"), ...walls.filter(({ side }) => side === "outside")] };
}
