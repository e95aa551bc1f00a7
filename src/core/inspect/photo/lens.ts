// Where would a point of a picture stand if the lens had kept straight lines straight? One number k, the division model: A. Fitzgibbon,
// Simultaneous linear estimation of multiple view geometry and lens distortion, CVPR 2001 (from memory). Points stand relative to the
// middle of the picture, y up, with its half diagonal as 1; k < 0 is a barrel, k > 0 a pincushion.

import type { Vec2 } from "../../geometry/vector";

/** The straight place of a point as pictured. */
export function straightened(k: number, { x, y }: Vec2): Vec2 {
  const by = 1 + k * (x * x + y * y);
  return { x: x / by, y: y / by };
}

/** Where a straight point is pictured: the inverse of `straightened`; beyond the reach of a pincushion, its farthest place. */
export function bent(k: number, { x, y }: Vec2): Vec2 {
  const by = 2 / (1 + Math.sqrt(Math.max(0, 1 - 4 * k * (x * x + y * y))));
  return { x: x * by, y: y * by };
}
