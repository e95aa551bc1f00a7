// Is a point of the wall seen? Exact for the thin wall on which cuts are found: the near wall is always seen; the far wall is
// hidden where the near wall stands in front of it and seen where that is cut away, through the mouth or an opening.

import { type Piece, keptAt } from "../core/index";
import type { Broadside } from "./views";

/** Covered: it falls on a visible edge of the near wall, which is drawn instead. */
export type Sight = "visible" | "hidden" | "covered";

/** Elements whose cosine towards the viewer is no less than this are on the near side or the contour. */
const CONTOUR = -1e-9;

/**
 * How the point at (theta, z) of the wall appears in a broadside view. `noise` in mm: lines closer than this coincide.
 */
export function sightOf(piece: Piece, view: Broadside, theta: number, z: number, noise: number): Sight {
  if (Math.cos(theta - view.facing) >= CONTOUR) return "visible";
  const { before, after } = keptAt(piece, 2 * view.facing + Math.PI - theta);
  const sides = [before, after];
  if (sides.some((stretches) => stretches.some(({ from, to }) => Math.abs(z - from) <= noise || Math.abs(z - to) <= noise))) {
    return "covered";
  }
  const standing = sides.filter((stretches) => stretches.some(({ from, to }) => z > from && z < to)).length;
  return standing === 2 ? "hidden" : standing === 1 ? "covered" : "visible";
}
