// A station in hand: its element in every view and in the pattern, and the projection lines that carry it from the circle to the
// front view, to the cut and on into the pattern. Drawn over a board without drawing the board again.

import type { Development, Piece, RuledElement, Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import { unionOf } from "../view/contour";
import type { CircleItem, Item, Ref } from "../display";
import { elementPoint } from "./elementPoint";
import { type Figures, METRIC } from "../figures";
import { metricsFor } from "../metrics";
import { onSheet } from "../place";
import { stroke } from "../strokes";
import type { ViewName } from "../view/views";

/** Radius of the mark on the circle, lettering heights. */
const MARK = 0.25;

/** An element shorter than this, mm, is a point. */
const POINT = 1e-6;

const BLOCKS = ["front", "top", "side"] as const;

/** Items for the station with this index in the stations of the piece; nothing for one that does not exist. */
export function projectionLines(
  board: Board, development: Development, index: number, { figures = METRIC, piece: number = 0 }: { figures?: Figures; piece?: number } = {},
): readonly Item[] {
  const piece = development.pieces[number];
  const station = piece?.stations[index];
  if (!piece || !station) return [];
  return elementLines(board, piece, station, { figures, ref: { clause: "stations", station: index } });
}

/** The same for any element of the piece, between stations too. */
export function elementLines(board: Board, piece: Piece, station: RuledElement, { figures = METRIC, ref }: { figures?: Figures; ref: Ref }): readonly Item[] {
  const kept = unionOf([...station.before, ...station.after]);
  const heights = kept.length > 0 ? [kept[0]?.from ?? 0, kept.at(-1)?.to ?? 0] : [];
  return [
    ...fromCircle(board, piece, station, heights, ref),
    ...intoPattern(board, piece, station, heights, ref),
    ...BLOCKS.flatMap((name) => elementIn(board, name, piece, station, kept, ref)),
    ...trueLength(board, station, kept, figures, ref),
  ];
}

/** From the point on the circle to the far end of the element in the view it projects to directly. */
function fromCircle(board: Board, piece: Piece, { theta }: RuledElement, heights: readonly number[], ref: Ref): Item[] {
  const circle: ViewName = board.views.top.kind === "end-on" ? "top" : "side";
  const start = elementPoint(board, circle, piece, theta, 0);
  const ends = heights.map((z) => elementPoint(board, "front", piece, theta, z));
  const distance = (point: Vec2) => Math.hypot(point.x - start.x, point.y - start.y);
  const [far] = ends.sort((a, b) => distance(b) - distance(a));
  return far ? [stroke("projection", start, far, ref)] : [];
}

/** From the ends of the element in the front view to its ends in the pattern, across whatever lies between. */
function intoPattern(board: Board, piece: Piece, { theta, girth }: RuledElement, heights: readonly number[], ref: Ref): Item[] {
  if (board.arrangement !== "projection") return [];
  return heights.map((z) => stroke("projection", elementPoint(board, "front", piece, theta, z), onSheet(board.blocks.pattern.place, { x: girth, y: z }), ref));
}

function elementIn(board: Board, name: ViewName, piece: Piece, { theta }: RuledElement, kept: readonly { from: number; to: number }[], ref: Ref): Item[] {
  if (board.views[name].kind === "broadside") {
    return kept.map(({ from, to }) => stroke("station in hand", elementPoint(board, name, piece, theta, from), elementPoint(board, name, piece, theta, to), ref));
  }
  const mark: CircleItem = { kind: "circle", pen: "station in hand", centre: elementPoint(board, name, piece, theta, 0), radius: MARK * board.lettering, ref };
  return [mark];
}

/** The element in the pattern with its kept length in figures beside its middle; nothing of one that is kept in a point only. */
function trueLength(board: Board, station: RuledElement, kept: readonly { from: number; to: number }[], figures: Figures, ref: Ref): Item[] {
  const { place } = board.blocks.pattern;
  const { lettering, gap } = metricsFor(board.lettering);
  const line = ({ from, to }: { from: number; to: number }) =>
    stroke("true length", onSheet(place, { x: station.girth, y: from }), onSheet(place, { x: station.girth, y: to }), ref);
  const longest = [...kept].sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!longest || longest.to - longest.from < POINT) return [];
  const middle = onSheet(place, { x: station.girth, y: (longest.from + longest.to) / 2 });
  const upright = place.turn === 0;
  // Beside the first edge of the seam stands the word for it, so there the figure stands inside.
  const beside = station.girth * place.scale < lettering + 2 * gap ? -gap - lettering : gap;
  const at = upright ? { x: middle.x - beside, y: middle.y } : { x: middle.x, y: middle.y + beside };
  return [...kept.map(line), {
    kind: "text", pen: "true length", text: figures.length(station.length), height: lettering, align: "middle", turn: upright ? Math.PI / 2 : 0, clear: true, at, ref,
  }];
}
