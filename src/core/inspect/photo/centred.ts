// Points moved to their middle and scaled to a mean distance of √2 from it, so that the equations of the homography weigh alike:
// R. Hartley, In defense of the eight-point algorithm, IEEE Trans. PAMI 19 (1997) (from memory).

import { type Vec2, lengthOf } from "../../geometry/vector";
import type { Homography } from "./homography";

export interface Centred {
  readonly points: readonly Vec2[];
  /** From the points given to those returned, and back. */
  readonly to: Homography;
  readonly from: Homography;
}

/** The points centred; at least two of them must differ. */
export function centred(points: readonly Vec2[]): Centred {
  const mean = (value: (point: Vec2) => number) => points.reduce((sum, point) => sum + value(point), 0) / points.length;
  const [x, y] = [mean((point) => point.x), mean((point) => point.y)];
  const s = Math.SQRT2 / mean((point) => lengthOf(point.x - x, point.y - y));
  return {
    points: points.map((point) => ({ x: s * (point.x - x), y: s * (point.y - y) })),
    to: [s, 0, -s * x, 0, s, -s * y, 0, 0, 1], from: [1 / s, 0, x, 0, 1 / s, y, 0, 0, 1],
  };
}
