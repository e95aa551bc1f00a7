// The smooth curve through the stations as exact cubics: a spline is a chain of them. Handles by Hermite's form, from the slopes at
// both ends of each piece.

import type { Cubic } from "../geometry/segment";
import { type Spline, splineValue } from "../numeric/spline";
import type { Piece } from "../part/pipePiece";
import { smoothEnd } from "./smoothCurve";

/** The smooth curve of one end in pattern coordinates (mm), x in [0, girth]; one chain for each unbroken stretch on this side of the seam. */
export function smoothCubics(piece: Piece, end: "top" | "bottom"): Cubic[][] {
  const { girth, stretches } = smoothEnd(piece, piece.stations, end);
  return stretches.flatMap((spline) => {
    const cubics = cubicsOf(spline);
    // Station 0 is a knot, so no piece runs across the seam.
    const before = cubics.filter(({ from, to }) => (from.x + to.x) / 2 <= girth);
    const over = cubics.filter(({ from, to }) => (from.x + to.x) / 2 > girth).map((cubic) => moved(cubic, -girth));
    return [before, over].filter((chain) => chain.length > 0);
  });
}

function cubicsOf(spline: Spline): Cubic[] {
  const knots = spline.at.map((x) => ({ x, ...splineValue(spline, x) }));
  return knots.slice(1).map((to, i) => {
    const from = knots[i] ?? to;
    const third = (to.x - from.x) / 3;
    return {
      kind: "cubic", from: { x: from.x, y: from.value }, to: { x: to.x, y: to.value },
      c1: { x: from.x + third, y: from.value + third * from.slope }, c2: { x: to.x - third, y: to.value - third * to.slope },
    };
  });
}

function moved({ from, c1, c2, to }: Cubic, by: number): Cubic {
  const move = ({ x, y }: Cubic["from"]) => ({ x: x + by, y });
  return { kind: "cubic", from: move(from), c1: move(c1), c2: move(c2), to: move(to) };
}
