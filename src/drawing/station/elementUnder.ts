// Which element does a point of a broadside view mean? Two lie in line; the near wall's, unless only the far wall is seen there.

import { type Piece, type Vec2, keptAt } from "../../core/index";
import type { Broadside } from "../view/views";

/** The element's direction (radians) for a point of the (upright) view, mm; beside the pipe the contour's. Within `slack` (mm) of the near wall it is that one's. */
export function elementUnder(piece: Piece, view: Broadside, { x, y }: Vec2, slack: number): number {
  const turn = Math.asin(Math.max(-1, Math.min(1, x / piece.form.cutRadius)));
  const near = view.facing + turn, far = view.facing + Math.PI - turn;
  const toNear = distanceTo(piece, near, y);
  return toNear > slack && distanceTo(piece, far, y) < toNear ? far : near;
}

/** How far a height is from what is kept of an element, mm. */
function distanceTo(piece: Piece, theta: number, z: number): number {
  const { before, after } = keptAt(piece, theta);
  return Math.min(...[...before, ...after].map(({ from, to }) => Math.max(0, from - z, z - to)));
}
