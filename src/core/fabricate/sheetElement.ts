// Where does an element lie on the sheet that is cut?

import { keptAt } from "../part/pieceElement";
import type { Piece } from "../part/pipePiece";
import type { Stretch } from "../trim/stretches";

/** Where elements lie on the finished pattern: the root gap taken off, mirrored for the opposite hand. */
export interface Layout {
  /** mm taken off each edge of the seam. */
  readonly setBack: number;
  readonly opposite: boolean;
}

export interface SheetElement {
  /** mm from the left end of the pattern. */
  readonly x: number;
  /** What is kept of it, at the seam of the sheet's own edge. */
  readonly stretches: readonly Stretch[];
}

/** The element at a girth position (mm, of the piece as described), on the finished pattern. */
export function sheetElement({ form, pattern, ...piece }: Piece, { setBack, opposite }: Layout, girth: number): SheetElement {
  const place = Math.max(setBack, Math.min(pattern.girth - setBack, girth));
  const theta = pattern.seam + (pattern.towards * place) / form.radius;
  const { before, after } = keptAt({ form, pattern, ...piece }, theta);
  const first = place < pattern.girth / 2;
  const stretches = first === pattern.towards > 0 ? after : before;
  return { x: opposite ? pattern.girth - place : place, stretches };
}
