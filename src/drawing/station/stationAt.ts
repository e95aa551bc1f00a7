// Which station does a pointer mean? The nearest one, in whatever block of the board the pointer is.

import type { Development, Station, Vec2 } from "../../core/index";
import type { BlockName } from "../board/arrange";
import type { Board } from "../board/board";
import { elementUnder } from "./elementUnder";
import { fromSheet } from "../place";
import { type EndOn, sheetAngle, sideways } from "../view/views";

const BLOCKS: readonly BlockName[] = ["pattern", "front", "top", "side"];

/** How near to the near wall a point of the sheet, mm, still means it, though the far one is seen there. */
export const SLACK = 1;

/** The index of the station nearest to a point of the sheet; null outside the blocks. Of two elements in line, the one that is seen there. */
export function stationAt(board: Board, development: Development, point: Vec2, pieceIndex = 0): number | null {
  const piece = development.pieces[pieceIndex];
  const name = BLOCKS.find((block) => {
    const { left, right, bottom, top } = board.blocks[block].bounds;
    return point.x >= left && point.x <= right && point.y >= bottom && point.y <= top;
  });
  if (!piece || !name) return null;
  const { cutRadius: radius } = piece.form;
  if (name === "pattern") {
    const { x } = fromSheet(board.blocks.pattern.place, point);
    return nearest(piece.stations, ({ girth }) => Math.abs(girth - x));
  }
  const view = board.views[name];
  if (view.kind === "end-on") return nearest(piece.stations, ({ theta }) => turnBetween(angleOf(board, name, view, point), theta));
  const { place } = board.blocks[name];
  const at = fromSheet(place, point);
  const wall = Math.sign(Math.cos(elementUnder(piece, view, at, SLACK / place.scale) - view.facing));
  // An element of the other wall counts as slightly farther off, so that the one seen wins.
  return nearest(piece.stations, ({ theta }) => Math.abs(sideways(view, radius, theta) - at.x) + (wall * Math.cos(theta - view.facing) < -1e-9 ? 1e-6 * radius : 0));
}

function nearest(stations: readonly Station[], distance: (station: Station) => number): number | null {
  let best: number | null = null;
  let least = Infinity;
  stations.forEach((station, index) => {
    const away = distance(station);
    if (away < least) [best, least] = [index, away];
  });
  return best;
}

/** The direction (radians) of a point round an end-on view. */
function angleOf(board: Board, name: BlockName, view: EndOn, { x, y }: Vec2): number {
  const { origin } = board.blocks[name].place;
  return view.sense * (Math.atan2(y - origin.y, x - origin.x) - sheetAngle(view, 0));
}

function turnBetween(a: number, b: number): number {
  return Math.abs(Math.sin((a - b) / 2));
}
