// Where are the two edges of a grooved seam folded? Each hook is as wide as the finished seam: its bend line lies that far in from
// the rim of its edge, however the 3 W are shared between the edges (common practice).

import type { Segment } from "../geometry/segment";
import type { Cut } from "../job/job";
import type { SeamJoint } from "../job/fabricationChoices";
import type { Piece } from "../part/pipePiece";
import type { Loop } from "../unroll/pattern";
import { type Mark, foldMarks, lineBetween } from "./mark";
import { notchedStrip } from "./notchedStrip";
import { type Run, runsOf } from "./place";
import { type Layout, sheetElement } from "./sheetElement";

/** Bend lines nearer than this to the net edge, mm, lie on it. */
const SAME = 1e-6;

/** The bend lines of a grooved seam that was made, with their prick points; none of any other joint. Parallels within `tolerance` mm. */
export function seamFolds(piece: Piece, net: readonly Loop[], layout: Layout, seam: SeamJoint, cuts: readonly Cut[], tolerance: number): Mark[] {
  if (seam.kind !== "grooved") return [];
  const { width, share } = seam;
  const { girth } = piece.pattern;
  return net.filter(({ kind }) => kind === "outline").flatMap(({ segments }) => runsOf(segments, girth, cuts)).flatMap((run): Mark[] => {
    const { place, segments } = run;
    if (place !== "seam-start" && place !== "seam-end") return [];
    const out = 3 * width * (place === "seam-start" ? share : 1 - share) - width;
    if (out < -SAME) return inside(piece, run, layout, place === "seam-start" ? -out : girth + out).flatMap((line) => foldMarks(place, [line]));
    const strip = out > SAME ? notchedStrip(segments, out, tolerance) : null;
    if (!strip) return foldMarks(place, segments);
    return strip.ok ? foldMarks(place, strip.outer) : [];
  });
}

/** The stretches of the sheet at x that stand beside a run. */
function inside(piece: Piece, { segments }: Run, layout: Layout, x: number): Segment[] {
  const heights = segments.flatMap(({ from, to }) => [from.y, to.y]);
  const low = Math.min(...heights), high = Math.max(...heights);
  const { stretches } = sheetElement(piece, layout, layout.opposite ? piece.pattern.girth - x : x);
  return stretches.filter(({ from, to }) => to > low && from < high).map(({ from, to }) => lineBetween({ x, y: from }, { x, y: to }));
}
