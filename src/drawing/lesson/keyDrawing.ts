// What does a key show? All of the board, its outline bold, over the whole construction, faint; the ordinates in figures.

import type { Development, Piece, Station } from "../../core/index";
import { boundsOf } from "../bounds";
import { type Box, boxesOverlap, growBox } from "../box";
import { clearedFigures } from "../dimension/clearedFigures";
import type { Item } from "../display";
import type { Figures } from "../figures";
import { stationsApart } from "../station/stationProjections";
import { broadsideNames } from "../steps/cutSight";
import { chordTicks, circleRadii, raisedElements } from "../steps/handwork";
import { linesApart } from "../steps/linesApart";
import { mitreLine } from "../steps/mitreLine";
import { stationRays } from "../steps/stationRays";
import { needsMitre } from "../steps/stepTexts";
import type { Way } from "../steps/way";
import { uncutPipe } from "../steps/uncutPipe";
import type { LessonBoard } from "./lessonBoard";
import { ordinateFigures } from "./ordinateFigures";
import type { LessonLayout } from "./placedOn";

export interface KeyDrawing {
  /** Construction first, figures last. */
  readonly items: readonly Item[];
  /** Stations, by index, whose ordinates are not all figured there. */
  readonly left: readonly number[];
  /** What its figures take. */
  readonly taken: Box;
}

/** The drawing of a key on the sheet where it stands. */
export function keyDrawing({ board, frame, taken }: LessonLayout, development: Development, piece: Piece, { way, figures }: { way: Way; figures: Figures }): KeyDrawing {
  const { blocks: { pattern }, lettering } = board;
  const others = taken.filter((box) => !boxesOverlap(growBox(pattern.bounds, -1), box));
  const isOpen = (box: Box) => isWithin(box, frame) && !others.some((other) => boxesOverlap(box, other));
  const lines = board.items.filter(({ kind }) => kind !== "text"), texts = board.items.filter(({ kind }) => kind === "text");
  const ordinates = ordinateFigures(pattern, piece, figures, lettering, isOpen);
  const drawn = [...linesApart(constructionOf(board, development, piece, way)), ...ordinates.leaders, ...lines].map(faint);
  return { items: clearedFigures([...drawn, ...texts, ...ordinates.figures]), left: ordinates.left, taken: growBox(boundsOf(ordinates.figures), 1) };
}

function isWithin(box: Box, frame: Box): boolean {
  return box.left > frame.left && box.right < frame.right && box.bottom > frame.bottom && box.top < frame.top;
}

/** Thin lines of every step; of the stations those at the quarters first, so that these stand where not all have room. */
function constructionOf(board: LessonBoard, development: Development, piece: Piece, way: Way): Item[] {
  const { views, shown } = board;
  const whole = shown.size === 3;
  const rays = quartersFirst(piece).map((station) => stationRays(board, development, piece, station));
  const openings = development.job.part.cuts.flatMap((cut) => (cut.kind === "opening" ? [cut.id] : []));
  const mitre = whole && needsMitre(board, development) ? [mitreLine(board, development.job.drawing.projection, piece.form.cutRadius).line] : [];
  return [
    ...uncutPipe(board, piece, broadsideNames(views).filter((name) => shown.has(name))),
    ...(way === "hand" ? [...circleRadii(board, piece), ...chordTicks(board, piece)] : []),
    ...mitre,
    ...raisedElements(board, piece, stationsApart(board, piece)),
    ...rays.flatMap(({ toCut, toViews, toPattern, toOpening }) => [...toCut, ...(whole ? toViews : []), ...toPattern, ...openings.flatMap(toOpening)]),
  ];
}

function quartersFirst({ stations }: Piece): Station[] {
  const isQuarter = ({ theta }: Station) => Math.abs(Math.sin(2 * theta)) < QUARTER;
  return [...stations.filter(isQuarter), ...stations.filter((station) => !isQuarter(station))];
}

/** Nearer than this to front, back, left or right a station stands at a quarter. */
const QUARTER = 1e-6;

/** Construction and elements as thin as the sheet has lines. */
function faint(item: Item): Item {
  return (item.kind === "path" || item.kind === "circle") && (item.pen === "projection" || item.pen === "station" || item.pen === "extra station") ? { ...item, pen: "faint" } : item;
}
