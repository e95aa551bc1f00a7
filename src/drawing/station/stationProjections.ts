// The construction a drafter leaves standing: for several stations at once the thin lines from the circle to the cut and, level with
// it, on into the other view and the pattern. Lines that would fall on one another are drawn once.

import type { Development, Piece, Station, Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import { unionOf } from "../view/contour";
import type { Item } from "../display";
import { elementPoint } from "./elementPoint";
import { metricsFor } from "../metrics";
import { onSheet } from "../place";
import { stroke } from "../strokes";
import { stepFor } from "../thinning";
import type { ViewName } from "../view/views";

/** Lines closer than this, sheet mm, are one. */
const SAME = 0.02;

/** Radius of the mark on the circle, lettering heights. */
const MARK = 0.15;

/** Projection lines of the stations with these indices, with a mark for each on the circle. Indices without a station give nothing. */
export function stationProjections(board: Board, development: Development, indices: readonly number[], { piece: number = 0 }: { piece?: number } = {}): readonly Item[] {
  const piece = development.pieces[number];
  if (!piece) return [];
  const stations = indices.flatMap((index) => piece.stations[index] ?? []);
  const circle: ViewName = board.views.top.kind === "end-on" ? "top" : "side";
  return [
    ...distinct(stations.flatMap((station) => fromCircle(board, circle, piece, station))),
    ...distinct(stations.flatMap((station) => acrossFrom(board, piece, station))),
    ...stations.map(({ theta }): Item => ({ kind: "circle", pen: "projection", centre: elementPoint(board, circle, piece, theta, 0), radius: MARK * board.lettering })),
  ];
}

/** The stations whose lines stand apart in the pattern at this scale: all, or every second, third, … and the extra ones. */
export function stationsApart({ blocks, lettering }: Pick<Board, "blocks" | "lettering">, { stations, pattern }: Piece): number[] {
  const count = stations.filter(({ mark }) => mark === "even").length;
  const step = stepFor((pattern.girth * blocks.pattern.place.scale) / count, metricsFor(lettering).gap);
  return stations.flatMap(({ mark, label }, index) => (mark === "closing" || (mark === "even" && Number(label) % step !== 0) ? [] : [index]));
}

/** A straight line and whether it runs up the sheet. */
interface Ray {
  readonly from: Vec2;
  readonly to: Vec2;
}

function fromCircle(board: Board, circle: ViewName, piece: Piece, station: Station): Ray[] {
  const start = elementPoint(board, circle, piece, station.theta, 0);
  const ends = heightsOf(station).map((z) => elementPoint(board, "front", piece, station.theta, z));
  return longest(ends.map((to) => ({ from: start, to })));
}

/** From each end of the element in the front view, square to the element, to the farthest of its places in the other view and the pattern. */
function acrossFrom(board: Board, piece: Piece, station: Station): Ray[] {
  const other: ViewName = board.views.top.kind === "end-on" ? "side" : "top";
  return heightsOf(station).flatMap((z) => {
    const from = elementPoint(board, "front", piece, station.theta, z);
    const inView = elementPoint(board, other, piece, station.theta, z);
    const inPattern = board.arrangement === "projection" ? [onSheet(board.blocks.pattern.place, { x: station.girth, y: z })] : [];
    const places = [from, inView, ...inPattern];
    return longest(places.flatMap((a) => places.map((b) => ({ from: a, to: b }))));
  });
}

function heightsOf({ before, after }: Station): number[] {
  const kept = unionOf([...before, ...after]);
  return kept.length > 0 ? [kept[0]?.from ?? 0, kept.at(-1)?.to ?? 0] : [];
}

function lengthOf({ from, to }: Ray): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

function longest(rays: readonly Ray[]): Ray[] {
  const [first] = [...rays].sort((a, b) => lengthOf(b) - lengthOf(a));
  return first && lengthOf(first) > SAME ? [first] : [];
}

/** Level and upright lines; those on one another become one from the first to the last of their ends. */
function distinct(rays: readonly Ray[]): Item[] {
  const lines = new Map<string, { upright: boolean; at: number; low: number; high: number }>();
  for (const { from, to } of rays) {
    const upright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y);
    const at = upright ? from.x : from.y;
    const [low, high] = (upright ? [from.y, to.y] : [from.x, to.x]).sort((a, b) => a - b) as [number, number];
    const key = `${upright} ${Math.round(at / SAME)}`;
    const same = lines.get(key);
    lines.set(key, same ? { ...same, low: Math.min(same.low, low), high: Math.max(same.high, high) } : { upright, at, low, high });
  }
  return [...lines.values()].map(({ upright, at, low, high }) =>
    upright ? stroke("projection", { x: at, y: low }, { x: at, y: high }) : stroke("projection", { x: low, y: at }, { x: high, y: at }));
}
