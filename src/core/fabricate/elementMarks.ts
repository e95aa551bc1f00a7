// Marks that stand on elements: quarter lines, station ticks, prick points of the rolled elements.

import { TURN, wrapTurn } from "../numeric/angle";
import type { Piece } from "../part/pipePiece";
import { type Direction, type Mark, lineBetween, prick } from "./mark";
import { type Layout, sheetElement } from "./sheetElement";

const QUARTERS: readonly (readonly [Direction, number])[] = [["front", 0], ["right", TURN / 4], ["back", TURN / 2], ["left", (3 * TURN) / 4]];

/** Quarter lines with the prick points at their ends; at the seam one for each of its edges. */
export function quarterMarks(piece: Piece, layout: Layout): Mark[] {
  return QUARTERS.flatMap(([direction, theta]) => placesOf(piece, theta).flatMap((girth) => {
    const { x, stretches } = sheetElement(piece, layout, girth);
    return stretches.flatMap(({ from, to }): Mark[] => {
      const line = lineBetween({ x, y: from }, { x, y: to });
      return [{ kind: "quarter", direction, line }, prick("quarter", line.from), prick("quarter", line.to)];
    });
  }));
}

/** Match marks where the quarter lines meet the ends: "top-front" of this piece meets "top-front" of its mate. */
export function endMatchMarks(piece: Piece, layout: Layout): Mark[] {
  return QUARTERS.flatMap(([direction, theta]) => placesOf(piece, theta).flatMap((girth): Mark[] => {
    const { x, stretches } = sheetElement(piece, layout, girth);
    const [first, last] = [stretches[0], stretches.at(-1)];
    if (!first || !last) return [];
    return [
      { kind: "match", id: `bottom-${direction}`, at: { x, y: first.from }, into: { x: 0, y: 1 } },
      { kind: "match", id: `top-${direction}`, at: { x, y: last.to }, into: { x: 0, y: -1 } },
    ];
  }));
}

/** A tick at each end of every station's element; for a blank also the prick points it is rolled along. */
export function stationMarks(piece: Piece, layout: Layout, rolled: boolean): Mark[] {
  return piece.stations.flatMap(({ label, girth }): Mark[] => {
    const { x, stretches } = sheetElement(piece, layout, girth);
    const [first, last] = [stretches[0], stretches.at(-1)];
    if (!first || !last) return [];
    const [bottom, top] = [{ x, y: first.from }, { x, y: last.to }];
    const ticks: Mark[] = [
      { kind: "tick", label, end: "bottom", at: bottom, into: { x: 0, y: 1 } },
      { kind: "tick", label, end: "top", at: top, into: { x: 0, y: -1 } },
    ];
    return rolled ? [...ticks, prick("roll", bottom), prick("roll", top)] : ticks;
  });
}

/** Girth positions of the element at θ: two at the seam. */
function placesOf({ form, pattern: { seam, towards, girth } }: Piece, theta: number): number[] {
  const place = form.radius * wrapTurn(towards * (theta - seam));
  const atSeam = Math.min(place, girth - place) < 1e-9 * girth;
  return atSeam ? [0, girth] : [place];
}
