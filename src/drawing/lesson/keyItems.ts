// What does a key show? All of the board, its outline bold, over the whole construction, faint; the ordinates in figures.

import type { Development, Piece } from "../../core/index";
import { clearedFigures } from "../dimension/clearedFigures";
import type { Item } from "../display";
import type { Figures } from "../figures";
import { stationsApart } from "../station/stationProjections";
import { broadsideNames } from "../steps/cutSight";
import { chordTicks, circleRadii, raisedElements } from "../steps/handwork";
import { mitreLine } from "../steps/mitreLine";
import { stationRays } from "../steps/stationRays";
import { needsMitre } from "../steps/stepTexts";
import type { Way } from "../steps/steps";
import { uncutPipe } from "../steps/uncutPipe";
import type { LessonBoard } from "./lessonBoard";
import { ordinateFigures } from "./ordinateFigures";

/** Construction first, figures last. */
export function keyItems(board: LessonBoard, development: Development, piece: Piece, { way, figures }: { way: Way; figures: Figures }): Item[] {
  const lines = board.items.filter(({ kind }) => kind !== "text"), texts = board.items.filter(({ kind }) => kind === "text");
  const drawn = [...constructionOf(board, development, piece, way), ...lines].map(faint);
  return clearedFigures([...drawn, ...texts, ...ordinateFigures(board.blocks.pattern, piece, figures, board.lettering)]);
}

/** Thin lines of every step, in the order of work. */
function constructionOf(board: LessonBoard, development: Development, piece: Piece, way: Way): Item[] {
  const { views, shown } = board;
  const whole = shown.size === 3;
  const rays = piece.stations.map((station) => stationRays(board, development, piece, station));
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

/** Construction and elements as thin as the sheet has lines. */
function faint(item: Item): Item {
  return (item.kind === "path" || item.kind === "circle") && (item.pen === "projection" || item.pen === "station" || item.pen === "extra station") ? { ...item, pen: "faint" } : item;
}
