// Where does a point of the pattern stand while the sheet is rolled up? The partly rolled sheet is bent evenly: its
// curvature is everywhere the same part of the finished pipe's, so lengths along the girth and heights stay as they are.

import type { Pipe } from "../form/pipe";
import type { Vec2, Vec3 } from "../geometry/vector";

/**
 * The place in mm of a pattern point (x: girth from the seam, y: height) at `fraction` in [0, 1] of the way from the flat
 * sheet (0) to the pipe (1). The middle of the girth stays at x = y = 0, the sheet flat there in the plane y = 0 and read
 * from the front (-y), x to the right, z up. `towards` as in the pattern: inside up (-1) rolls towards the reader, outside
 * up (1) away. At 1 the points are those of the pipe, moved: the pipe turned about its axis by minus the seam's direction
 * (outside up: by half a turn more) and its axis set at y = `towards` · radius. Exact to rounding for every fraction, 0 too.
 * Circular arcs of equal length: x = sin(κa)/κ, y = (1 - cos(κa))/κ with κ = fraction/radius, a from the middle of the girth.
 * @throws RangeError for a fraction outside [0, 1].
 */
export function rolledPoint(pipe: Pipe, towards: 1 | -1, { x, y }: Vec2, fraction: number): Vec3 {
  if (!(fraction >= 0 && fraction <= 1)) throw new RangeError(`invalid fraction: ${fraction}; not in [0, 1]`);
  const along = x - pipe.girth / 2;
  const half = (fraction * along) / pipe.radius / 2;
  return { x: along * sinc(2 * half), y: towards * along * sinc(half) * Math.sin(half), z: y };
}

/** sin(x)/x, continued through 0. */
function sinc(x: number): number {
  return x === 0 ? 1 : Math.sin(x) / x;
}
