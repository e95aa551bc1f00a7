// A small drawing of a piece in one view, without figures, with what is meant marked in the ink of what is in hand.

import type { Development, Piece, Vec2 } from "../../core/index";
import { boundsOf } from "../bounds";
import { type Box, boxOfPoints, growBox } from "../box";
import type { Item, PathItem } from "../display";
import { markItems, markPoints, type Mark } from "./miniatureMarks";
import { metricsFor } from "../metrics";
import { moveItem } from "../moveItem";
import { patternEdges } from "../pattern/patternOutline";
import { type Place, onSheet, segmentOnSheet } from "../place";
import { stationLines } from "../pattern/stationLines";
import { stroke } from "../strokes";
import { viewGeometry } from "../view/viewGeometry";
import { type ViewName, viewsOf } from "../view/views";

export interface Miniature {
  readonly view: ViewName | "pattern";
  /** In the coordinates of that view, model mm: sideways from the axis and height, or along the girth and height. */
  readonly marks: readonly Mark[];
}

/** Room kept round the drawing, sheet mm. */
const MARGIN = 2;

/** How often the scale is corrected; each time what is too much shrinks by far more than half. */
const ROUNDS = 4;

/** Figures are not written; what is drawn for them would be this high, sheet mm. */
const LETTERING = 2.5;

/**
 * The items of a miniature, in the middle of a window of this size (sheet mm), as large as it fits.
 * @throws RangeError for a window without room or a development without pieces.
 */
export function miniature(development: Development, { view, marks }: Miniature, width: number, height: number): Item[] {
  if (!(width > 2 * MARGIN && height > 2 * MARGIN)) throw new RangeError(`invalid window: ${width} × ${height}`);
  const [piece] = development.pieces;
  if (!piece) throw new RangeError("nothing to draw: no piece");
  const lines = (place: Place) => (view === "pattern" ? patternLines(piece, place) : viewLines(development, piece, view, place));
  const model = { origin: { x: 0, y: 0 }, scale: 1, turn: 0 } as const;
  const box = growBox(joined(seen(lines(model)), markPoints(marks)), 1e-6);
  const room = ({ left, right, bottom, top }: Box) => Math.min((width - 2 * MARGIN) / (right - left), (height - 2 * MARGIN) / (top - bottom));
  const draw = (scale: number): Item[] => {
    const place: Place = { origin: { x: 0, y: 0 }, scale, turn: 0 };
    return [...lines(place), ...markItems(marks, place)];
  };
  // Arrowheads do not grow with the scale: where they stand outside, the rest makes room for them.
  let scale = room(box);
  for (let round = 0; round < ROUNDS; round++) scale *= Math.min(1, room(seen(draw(scale))));
  const drawn = draw(scale);
  const { left, right, bottom, top } = seen(drawn);
  return drawn.map((item) => moveItem(item, { x: (width - left - right) / 2, y: (height - bottom - top) / 2 }));
}

/** The box that counts: centre lines may run into the margin. */
function seen(items: readonly Item[]): Box {
  return boundsOf(items.filter((item) => !("pen" in item && item.pen === "centre line")));
}

function joined(box: Box, points: readonly Vec2[]): Box {
  return boxOfPoints([{ x: box.left, y: box.bottom }, { x: box.right, y: box.top }, ...points]);
}

function viewLines({ job }: Development, piece: Piece, name: ViewName, place: Place): PathItem[] {
  const view = viewsOf(piece.form.attitude, job.drawing.projection)[name];
  const { past } = metricsFor(LETTERING);
  const reach = piece.form.cutRadius + past / place.scale;
  const [low, high] = view.kind === "end-on" ? [-reach, reach] : [piece.pattern.height[0] - past / place.scale, piece.pattern.height[1] + past / place.scale];
  const across = view.kind === "end-on" ? [stroke("centre line", onSheet(place, { x: -reach, y: 0 }), onSheet(place, { x: reach, y: 0 }))] : [];
  return [
    ...across,
    stroke("centre line", onSheet(place, { x: 0, y: low }), onSheet(place, { x: 0, y: high })),
    ...viewGeometry(piece, view).map(({ pen, segments, closed }): PathItem => ({ kind: "path", pen, closed, segments: segments.map((segment) => segmentOnSheet(place, segment)) })),
  ];
}

function patternLines(piece: Piece, place: Place): PathItem[] {
  return [...stationLines(piece, place, metricsFor(LETTERING)), ...patternEdges(piece.pattern.loops, place)];
}
