// The board of a school sheet: the views that are shown with what defines the piece, and the pattern in projection with the front
// view. Question and key are taken from one and the same, so that a key lies over its question line by line.

import type { Development, Piece, Vec2 } from "../../core/index";
import { type BlockName, arrangeBlocks } from "../board/arrange";
import type { Block, Board } from "../board/board";
import { boundsOf } from "../bounds";
import { type Box, joinBoxes, moveBox } from "../box";
import type { Item } from "../display";
import type { Figures } from "../figures";
import { LETTERING } from "../lettering";
import { type Metrics, metricsFor } from "../metrics";
import { moveItem } from "../moveItem";
import { patternBlock } from "../pattern/patternBlock";
import { type Place, onSheet } from "../place";
import { chordSteps } from "../steps/chordSteps";
import { evenStations } from "./evenStations";
import { stroke } from "../strokes";
import { viewBlock } from "../board/viewBlock";
import { viewGeometry } from "../view/viewGeometry";
import { type ViewName, type Views, viewsOf } from "../view/views";
import { givenMeasures } from "./givenMeasures";
import type { AllLessonWords } from "./lessonWords";
import { shownViews } from "./shownViews";

export interface LessonBoard extends Board {
  readonly shown: ReadonlySet<ViewName>;
}

export interface LessonBoardOptions {
  readonly other: boolean;
  readonly figures: Figures;
  readonly words: AllLessonWords;
}

/** The board at a scale, as its blocks come; `boardAt` moves it. Worked out once for all scales. */
export function lessonBoards(development: Development, piece: Piece, { other, figures, words }: LessonBoardOptions): (scale: number) => LessonBoard {
  const { job } = development;
  const { attitude } = job.part;
  const views = viewsOf(attitude, job.drawing.projection);
  const shown = shownViews(development, piece, views, other);
  const measures = givenMeasures(development, piece, views, figures, words);
  const metrics = metricsFor(LETTERING);
  const plans = [...shown].map((name) => ({ name, plan: { development, piece, views, view: views[name], lines: viewGeometry(piece, views[name]), measures: measures[name] } }));
  const said = { ...words.sheet, stretchOut: words.lesson.timesPi(figures.length(piece.form.developed)) };
  return (scale) => {
    const placed = (name: BlockName, origin: Vec2): Place => ({ origin, scale, turn: attitude === "upright" || name === "side" ? 0 : -90 });
    const at = (name: BlockName) => placed(name, { x: 0, y: 0 });
    const drawn: Record<BlockName, Item[]> = { front: [], top: [], side: [], pattern: patternBlock(piece, at("pattern"), metrics, figures, said, null, chordNotes(piece, figures, words)) };
    for (const { name, plan } of plans) drawn[name] = viewBlock(plan, at(name), metrics, figures).filter((item) => !isDerived(item, job));
    const room = (name: BlockName) => roomOf([...drawn[name], ...reachOf(name, piece, views, at(name), metrics)], drawn[name].length > 0);
    const boxes = { front: room("front"), top: room("top"), side: room("side"), pattern: room("pattern") };
    const { origins, bounds } = arrangeBlocks(boxes, "projection", attitude, job.drawing.projection, metrics.between);
    const block = (name: BlockName): Block => {
      const items = drawn[name].map((item) => moveItem(item, origins[name]));
      return { name, place: placed(name, origins[name]), bounds: moveBox(boxes[name], origins[name]), items };
    };
    const blocks = { front: block("front"), top: block("top"), side: block("side"), pattern: block("pattern") };
    return { blocks, bounds, scale, views, shown, arrangement: "projection", lettering: LETTERING, items: Object.values(blocks).flatMap(({ items }) => items) };
  };
}

/** The same board elsewhere on the sheet. */
export function movedBoard(board: LessonBoard, by: Vec2): LessonBoard {
  const block = ({ name, place, items, bounds }: Block): Block => ({
    name, place: { ...place, origin: { x: place.origin.x + by.x, y: place.origin.y + by.y } }, bounds: moveBox(bounds, by), items: items.map((item) => moveItem(item, by)),
  });
  const { front, top, side, pattern } = board.blocks;
  const blocks = { front: block(front), top: block(top), side: block(side), pattern: block(pattern) };
  const all = Object.values(blocks);
  return { ...board, blocks, items: all.flatMap(({ items }) => items), bounds: all.map(({ bounds }) => bounds).reduce(joinBoxes) };
}

/** A view that is not shown takes a point. */
function roomOf(items: readonly Item[], isShown: boolean): Box {
  return isShown ? boundsOf(items) : { left: 0, right: 0, bottom: 0, top: 0 };
}

/** How far the construction of a block reaches beyond what is drawn of it: the uncut pipe, the raised elements. */
function reachOf(name: BlockName, { form: { cutRadius, length }, pattern: { girth, height } }: Piece, views: Views, place: Place, { past }: Metrics): Item[] {
  const low = Math.min(0, height[0]), high = height[1];
  const between = (from: Vec2, to: Vec2) => [stroke("projection", onSheet(place, from), onSheet(place, to))];
  if (name === "pattern") return between({ x: 0, y: low }, { x: girth, y: high + past / place.scale });
  return views[name].kind === "end-on" ? [] : between({ x: -cutRadius, y: low }, { x: cutRadius, y: Math.max(length, high) });
}

/** What the chords of the even stations come to. */
function chordNotes(piece: Piece, figures: Figures, { lesson }: AllLessonWords): string[] {
  const count = evenStations(piece);
  if (count < 2) return [];
  const { chord, total, short } = chordSteps(piece.form.radius, count);
  return [lesson.chords(count, figures.length(chord), figures.length(total), figures.length(short))];
}

/** A radius that follows from other measures of a shaped end. */
function isDerived(item: Item, { part }: Development["job"]): boolean {
  if (!("ref" in item) || item.ref?.field !== null) return false;
  const { clause } = item.ref;
  return part.cuts.some(({ id, kind }) => kind === "shaped" && clause === `cut:${id}`);
}
