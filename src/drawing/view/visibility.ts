// Is a point of the wall seen? Exact for the thin wall on which cuts are found: the near wall is always seen; the far wall is
// hidden where the near wall stands in front of it and seen where that is cut away, through the mouth or an opening.

import { type Piece, keptAt } from "../../core/index";
import type { Broadside } from "./views";

/** Covered: it falls on a visible edge of the near wall, which is drawn instead. */
export type Sight = "visible" | "hidden" | "covered";

/** Elements whose cosine towards the viewer is no less than this are on the near side or the contour. */
const CONTOUR = -1e-9;

/** Whether an element stands on the wall towards the viewer or on the contour. */
export function isNear(view: Broadside, theta: number): boolean {
  return Math.cos(theta - view.facing) >= CONTOUR;
}

export interface Appearance {
  readonly sight: Sight;
  /** Distance in mm, along the element, from the nearest end of the near wall's kept stretches: nothing changes nearer than this. */
  readonly margin: number;
}

/**
 * How the point at (theta, z) of the wall appears in a broadside view. `noise` in mm: lines closer than this coincide.
 */
export function appearanceOf(piece: Piece, view: Broadside, theta: number, z: number, noise: number): Appearance {
  if (isNear(view, theta)) return { sight: "visible", margin: Infinity };
  const { before, after } = keptAt(piece, 2 * view.facing + Math.PI - theta);
  let margin = Infinity;
  let standing = 0;
  for (const stretches of [before, after]) {
    for (const { from, to } of stretches) {
      margin = Math.min(margin, Math.abs(z - from), Math.abs(z - to));
      if (z > from && z < to) standing++;
    }
  }
  if (margin <= noise || standing === 1) return { sight: "covered", margin };
  return { sight: standing === 2 ? "hidden" : "visible", margin };
}
