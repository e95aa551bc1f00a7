// Lines that are drawn on the board and are no part of the drawing itself: radii from the set-square, ticks of the dividers, elements
// raised past the edge that will be found on them.

import type { Piece, Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import type { Item } from "../display";
import { elementPoint } from "../station/elementPoint";
import { metricsFor } from "../metrics";
import { onSheet } from "../place";
import { stroke } from "../strokes";
import { chordSteps } from "./chordSteps";
import { circleName } from "./cutSight";

/** A radius to each station of the circle, as the set-square rules it through the centre. */
export function circleRadii(board: Board, piece: Piece): Item[] {
  const name = circleName(board.views);
  const { origin } = board.blocks[name].place;
  return evenStations(piece).map(({ theta }) => stroke("projection", origin, elementPoint(board, name, piece, theta, 0)));
}

/** The ticks at which chords of the circle, stepped off along the stretch-out line from the seam, end. */
export function chordTicks(board: Board, piece: Piece): Item[] {
  const count = evenStations(piece).length;
  if (count < 2) return [];
  const { place } = board.blocks.pattern;
  const { tick } = metricsFor(board.lettering);
  const { chord } = chordSteps(piece.form.radius, count);
  return Array.from({ length: count }, (_, i) => (i + 1) * chord).map((x) => across(onSheet(place, { x, y: 0 }), place.turn === 0, tick));
}

/** An element of the full height of the pattern at each of these stations and at both ends of the seam. */
export function raisedElements(board: Board, piece: Piece, stations: readonly number[]): Item[] {
  const { place } = board.blocks.pattern;
  const past = metricsFor(board.lettering).past / place.scale;
  const high = piece.pattern.height[1] + past;
  const places = [...stations.flatMap((index) => piece.stations[index]?.girth ?? []), piece.pattern.girth];
  return [...new Set(places)].map((x) => stroke("projection", onSheet(place, { x, y: 0 }), onSheet(place, { x, y: high })));
}

function evenStations({ stations }: Piece) {
  return stations.filter(({ mark }) => mark === "even");
}

/** A short line square across the stretch-out line. */
function across({ x, y }: Vec2, upright: boolean, half: number): Item {
  return upright ? stroke("projection", { x, y: y - half }, { x, y: y + half }) : stroke("projection", { x: x - half, y }, { x: x + half, y });
}
