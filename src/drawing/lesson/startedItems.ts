// A development begun: the stretch-out line, its divisions and numbers as far as the teacher draws them.

import type { Development, Piece } from "../../core/index";
import type { Item } from "../display";
import { metricsFor } from "../metrics";
import { type Place, onSheet } from "../place";
import { itemStep } from "../steps/itemStep";
import { stroke } from "../strokes";
import type { LessonBoard } from "./lessonBoard";
import type { LessonSheets } from "./lessonSheets";

/** Items of the pattern; extra stations are left to be found. */
export function startedItems(board: LessonBoard, development: Development, piece: Piece, upTo: LessonSheets["started"]): Item[] {
  const { items, place } = board.blocks.pattern;
  const line = items.filter((item) => "pen" in item && item.pen === "stretch-out");
  if (upTo === "line") return line;
  const { tick } = metricsFor(board.lettering);
  const ticks = piece.stations.filter(isEven).map(({ girth }) => tickAt(girth, 2 * tick, place));
  const isNumber = (item: Item) => {
    const station = "ref" in item && item.ref?.station !== undefined ? piece.stations[item.ref.station] : undefined;
    return item.kind === "text" && station !== undefined && isEven(station) && itemStep(development, board, "pattern", item).step === "elements";
  };
  return [...line, ...ticks, ...(upTo === "numbered" ? items.filter(isNumber) : [])];
}

function isEven({ mark }: Piece["stations"][number]): boolean {
  return mark === "even" || mark === "closing";
}

/** A short line square off the stretch-out line, away from its number. */
function tickAt(girth: number, length: number, place: Place): Item {
  return stroke("station", onSheet(place, { x: girth, y: 0 }), onSheet(place, { x: girth, y: length / place.scale }));
}
