// What does a question show? The board without anything the student is to find.

import type { Development, Piece } from "../../core/index";
import { clearedFigures } from "../dimension/clearedFigures";
import type { Item } from "../display";
import { openingPlaces } from "../view/openingPlaces";
import { truestView } from "../dimension/openingMeasures";
import type { Place } from "../place";
import { itemStep } from "../steps/itemStep";
import { broadsideNames, givingView } from "../steps/cutSight";
import { uncutPipe } from "../steps/uncutPipe";
import type { ViewName } from "../view/views";
import type { LessonBoard } from "./lessonBoard";

export interface GivenChoices {
  /** Cuts found by projection are drawn too. */
  readonly found: boolean;
  /** The circle is divided and numbered. */
  readonly numbered: boolean;
}

/** Items of the views; nothing of the pattern. Where a cut is left to be found the uncut pipe stands, thin. */
export function givenItems(board: LessonBoard, development: Development, piece: Piece, { found, numbered }: GivenChoices): Item[] {
  const { blocks, views, shown } = board;
  const openings = openingPlaces(development.job, piece).map((place) => ({ clause: `cut:${place.cut.id}`, view: truestView(views, place) }));
  const isUnseen = (item: Item) => !found && item.kind !== "text" && "ref" in item && item.ref?.field === "angle"
    && development.job.part.cuts.some((cut) => item.ref?.clause === `cut:${cut.id}` && givingView(cut, views) === null);
  const isGiven = (name: ViewName, item: Item): boolean => {
    // No arrow to a line that is left to be found.
    if (isUnseen(item)) return false;
    const { step } = itemStep(development, board, name, item);
    if (step === "circle") return numbered;
    if (step === "complete") return found;
    if (!step.startsWith("opening-")) return true;
    return found || openings.some(({ clause, view }) => "ref" in item && item.ref?.clause === clause && view === name);
  };
  const kept = [...shown].flatMap((name) => blocks[name].items.flatMap((item) => (isGiven(name, item) ? [item] : onAxis(item, blocks[name].place))));
  const isOpen = (name: ViewName) => openings.some(({ view }) => view !== name);
  const isFound = (name: ViewName) => isOpen(name) || blocks[name].items.some((item) => itemStep(development, board, name, item).step === "complete");
  const left = found ? [] : broadsideNames(views).filter((name) => shown.has(name) && isFound(name));
  return clearedFigures([...uncutPipe(board, piece, left), ...kept]);
}

/** A seam that is not given leaves the axis it stood on. */
function onAxis(item: Item, { origin, turn }: Place): Item[] {
  if (item.kind !== "path" || item.pen !== "seam") return [];
  const isOn = item.segments.every(({ from }) => Math.abs(turn === 0 ? from.x - origin.x : from.y - origin.y) < 1e-6);
  return isOn ? [{ ...item, pen: "centre line" }] : [];
}
