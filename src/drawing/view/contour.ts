// The two outermost elements of a broadside view, where they are kept on either side.

import { type Piece, type Stretch, keptAt } from "../../core/index";
import type { Broadside } from "./views";

export interface ContourStretch {
  /** 1: the right-hand element of the (upright) view. */
  readonly side: 1 | -1;
  /** Heights, mm. */
  readonly from: number;
  readonly to: number;
}

/** Kept stretches of both contour elements. */
export function contourStretches(piece: Piece, view: Broadside): ContourStretch[] {
  return ([1, -1] as const).flatMap((side) => {
    const { before, after } = keptAt(piece, view.facing + (side * Math.PI) / 2);
    return unionOf([...before, ...after]).map(({ from, to }) => ({ side, from, to }));
  });
}

/** Stretches joined where they overlap or touch, from low to high. */
export function unionOf(stretches: readonly Pick<Stretch, "from" | "to">[]): { from: number; to: number }[] {
  const joined: { from: number; to: number }[] = [];
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && from <= last.to) last.to = Math.max(last.to, to);
    else joined.push({ from, to });
  }
  return joined;
}
