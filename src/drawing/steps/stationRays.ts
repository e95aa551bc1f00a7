// The thin lines that carry one station through the drawing: from the circle to the view that gives the cut, level on to the other
// view, and level into the pattern; with a small mark for each point found.

import type { Development, Piece, Station, Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import type { Item } from "../display";
import { elementPoint } from "../station/elementPoint";
import { onSheet } from "../place";
import { stroke } from "../strokes";
import type { ViewName } from "../view/views";
import { type EndPoint, broadsideNames, circleName, endPoints, givingView, isGivenIn } from "./cutSight";
import { mitreLine } from "./mitreLine";

/** Radius of the mark of a point, lettering heights. */
const MARK = 0.15;

/** Lines shorter than this, sheet mm, are none. */
const NOTHING = 0.02;

export interface StationRays {
  /** From the circle to the cut as it is given, the points on it marked. */
  readonly toCut: readonly Item[];
  /** From there, and from the circle, to the views in which the cut is found. */
  readonly toViews: readonly Item[];
  /** Level into the pattern, its points marked; only the marks where the pattern stands apart. */
  readonly toPattern: readonly Item[];
  /** The same for the points of each opening, by the id of its cut. */
  readonly toOpening: (id: string) => readonly Item[];
}

/** The lines of one station of a piece. */
export function stationRays(board: Board, { job }: Development, piece: Piece, station: Station): StationRays {
  const { theta, girth } = station;
  const [front, other] = broadsideNames(board.views);
  const start = elementPoint(board, circleName(board.views), piece, theta, 0);
  const mitre = mitreLine(board, job.drawing.projection, piece.form.cutRadius);
  const at = (name: ViewName, { z }: EndPoint) => elementPoint(board, name, piece, theta, z);
  const mark = (centre: Vec2): Item => ({ kind: "circle", pen: "projection", centre, radius: MARK * board.lettering });
  const points = endPoints(job, piece, station);
  const ends = points.filter(({ cut }) => cut?.kind !== "opening");
  const onCuts = ends.filter(({ cut }) => cut !== null);
  const givenIn = ({ cut }: EndPoint): ViewName => (cut && givingView(cut, board.views)) ?? front;

  /** From the circle to the farthest of some points in a view. */
  const projectors = (name: ViewName, to: readonly EndPoint[]): Item[] => {
    const places = to.map((point) => at(name, point));
    if (name === front) return line(start, farthest(start, places));
    const corner = mitre.over(start);
    return places.length === 0 ? [] : [...line(start, corner), ...line(corner, farthest(corner, places))];
  };
  const inPattern = ({ z }: EndPoint) => onSheet(board.blocks.pattern.place, { x: girth, y: z });
  const carried = (some: readonly EndPoint[], from: (point: EndPoint) => ViewName): Item[] => [
    ...(board.arrangement === "projection" ? some.flatMap((point) => line(at(from(point), point), inPattern(point))) : []),
    ...some.map((point) => mark(inPattern(point))),
  ];
  const foundIn = (name: ViewName) => onCuts.filter((point) => givenIn(point) !== name && !(point.cut && isGivenIn(point.cut, board.views[name])));

  return {
    toCut: [mark(start), ...[front, other].flatMap((name) => {
      const here = onCuts.filter((point) => givenIn(point) === name);
      return [...projectors(name, here), ...here.map((point) => mark(at(name, point)))];
    })],
    toViews: [front, other].flatMap((name) => {
      const found = foundIn(name);
      return [...projectors(name, found), ...found.flatMap((point) => [...line(at(givenIn(point), point), at(name, point)), mark(at(name, point))])];
    }),
    toPattern: carried(ends, givenIn),
    toOpening: (id) => {
      const some = points.filter(({ cut }) => cut?.id === id);
      return [...some.flatMap((point) => [...line(at(front, point), at(other, point)), mark(at(front, point))]), ...carried(some, () => other)];
    },
  };
}

function line(from: Vec2, to: Vec2): Item[] {
  return Math.hypot(to.x - from.x, to.y - from.y) > NOTHING ? [stroke("projection", from, to)] : [];
}

/** The farthest of some points, or the start itself when there are none. */
function farthest(from: Vec2, points: readonly Vec2[]): Vec2 {
  const distance = ({ x, y }: Vec2) => Math.hypot(x - from.x, y - from.y);
  return points.reduce((best, point) => (distance(point) > distance(best) ? point : best), from);
}
