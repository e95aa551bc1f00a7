// What was read off a hand-drawn development, over the true pattern: a ring where each ordinate was read, and a line from the true place
// to those outside the tolerance. Deviations may be drawn larger than they are.

import { TURN, type JudgedReading, type Piece, type Readings, girthAt, isOrdinate } from "../../core/index";
import type { Board } from "../board/board";
import type { Item } from "../display";
import { onSheet } from "../place";
import { stroke } from "../strokes";

/** Radius of a ring, in lettering heights. */
const RING = 0.22;

/** Items for ordinates that were judged; a reading `times` as far off as it is. Readings in mm on paper, as in the core. */
export function measuredPoints(
  board: Board, piece: Piece, { scale, count, start, towards }: Readings, judged: readonly JudgedReading[], { times = 1 }: { times?: number } = {},
): readonly Item[] {
  const { place } = board.blocks.pattern;
  const { girth, seam } = piece.pattern;
  return judged.flatMap(({ reading, expected, deviation, within }): Item[] => {
    if (!isOrdinate(reading) || expected === null || deviation === null) return [];
    const theta = start + (towards * TURN * reading.at) / count;
    const x = reading.at === count && start === seam ? girth : girthAt(piece.pattern, piece.form.radius, theta);
    const height = expected / scale;
    const from = onSheet(place, { x, y: height });
    const centre = onSheet(place, { x, y: height + (times * deviation) / scale });
    const ring: Item = { kind: "circle", pen: within ? "true length" : "station in hand", centre, radius: RING * board.lettering };
    return within ? [ring] : [stroke("station in hand", from, centre), ring];
  });
}
