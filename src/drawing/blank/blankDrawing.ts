// A fabricated piece at full size: what is cut, bent and marked, with words that meet no line.

import type { FabricatedPiece, Mark, Segment } from "../../core/index";
import { clearSpace } from "../clearSpace";
import type { Item } from "../display";
import { type Figures, METRIC } from "../figures";
import { LETTERING } from "../lettering";
import { metricsFor } from "../metrics";
import { polygon } from "../strokes";
import { allowanceNotes } from "./allowanceNotes";
import { type BlankWords, ENGLISH_BLANK } from "./blankWords";
import { bendItems, contourItems } from "./cutLines";
import { cutSheet } from "./cutSheet";
import { faceNote } from "./faceNote";
import { arrowItems, matchItems, prickItems } from "./sheetMarks";
import { tickLabels } from "./tickLabels";
import { quarterItems, tickItems } from "./uprightLines";
import { arrowWords, quarterNames, seamWords } from "./uprightWords";

export interface BlankOptions {
  readonly figures?: Figures;
  readonly words?: BlankWords;
  /** Height of figures, mm; 3.5 unless given. */
  readonly lettering?: number;
}

/** Words keep this many mm from lines. */
const CLEAR = 0.4;

/**
 * The piece in its own pattern's millimetres, y up: closed cut lines, slits, bend and seam lines, quarter lines with their names,
 * station ticks with their numbers, prick points, match marks, arrows, the sum of every allowance, the face. A word without a free
 * place is left out; lines never are.
 */
export function blankDrawing(piece: FabricatedPiece, { figures = METRIC, words = ENGLISH_BLANK, lettering = LETTERING }: BlankOptions = {}): Item[] {
  const { contours, marks, allowances } = piece;
  const metrics = metricsFor(lettering);
  const sheet = cutSheet(contours);
  const lines = [
    ...contourItems(contours), ...bendItems(marks), ...quarterItems(piece), ...tickItems(piece), ...prickItems(marks), ...matchItems(marks, sheet), ...arrowItems(marks),
  ];
  const space = clearSpace(CLEAR);
  space.take(lines.map(squared));
  const ticks = marks.filter((mark): mark is Extract<Mark, { kind: "tick" }> => mark.kind === "tick");
  return [
    ...lines,
    ...arrowWords(marks, space, metrics, words),
    ...tickLabels(ticks, piece.piece.pattern.girth, sheet, space, metrics),
    ...allowanceNotes(allowances, contours, space, metrics, figures, words),
    ...quarterNames(marks, sheet, space, metrics, words),
    ...seamWords(seamEdges(piece), sheet, space, metrics, words),
    ...faceNote(piece, sheet, space, metrics, figures, words),
  ];
}

/** A prick point's circle as the square round it: for lettering the same, and quicker where there are hundreds. */
function squared(item: Item): Item {
  if (item.kind !== "circle") return item;
  const { centre: { x, y }, radius, pen } = item;
  return polygon(pen, [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([across = 0, up = 0]) => ({ x: x + across * radius, y: y + up * radius })));
}

/** The net edges of the seam. */
function seamEdges({ net }: FabricatedPiece): Segment[] {
  return net.flatMap(({ segments }) => segments.filter(({ owner }) => owner.kind === "seam"));
}
