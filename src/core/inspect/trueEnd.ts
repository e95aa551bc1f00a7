// The true edge of one end as close points along the girth: what the smooth curve through the stations is held against.

import { wrapTurn } from "../numeric/angle";
import type { Vec2 } from "../geometry/vector";
import type { Piece } from "../part/pipePiece";
import { endHeights } from "../unroll/endHeights";

/** Points for one turn; each span gets its share, at least LEAST. */
const POINTS = 360;
const LEAST = 12;

/** Points of the end's true edge, x = girth position from the seam in the pattern, y = height (mm); both ends of every span included. */
export function trueEnd(piece: Piece, end: "top" | "bottom"): Vec2[] {
  const { form, cutters, trimmed, pattern } = piece;
  const points: Vec2[] = [];
  for (const span of trimmed.spans) {
    const turn = span.to - span.from;
    const parts = Math.max(LEAST, Math.ceil((POINTS * turn) / (2 * Math.PI)));
    for (let i = 0; i <= parts; i++) {
      const theta = span.from + (turn * (1 - Math.cos((Math.PI * i) / parts))) / 2;
      const ends = endHeights(cutters, span, theta);
      if (ends) points.push({ x: girthAt(pattern, form.radius, theta), y: ends[end] });
    }
  }
  return points;
}

/** Girth position (mm, [0, girth)) of θ in a pattern. */
export function girthAt({ seam, towards }: { seam: number; towards: 1 | -1 }, radius: number, theta: number): number {
  return radius * wrapTurn(towards * (theta - seam));
}
