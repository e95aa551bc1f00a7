// A width of an opening, written right beside the opening while the paper there is clear.

import { boundsOfItem } from "../bounds";
import { type Box, boxesOverlap } from "../box";
import type { ClearSpace } from "../clearSpace";
import { dimensionLine } from "./dimensionLine";
import type { Item } from "../display";
import { figurePlace } from "./figurePlace";
import type { Metrics } from "../metrics";
import { type Place, onSheet } from "../place";
import type { ViewDimension } from "./viewMeasures";
import { stroke } from "../strokes";

/** Distances from the opening tried, in lettering heights. */
const DISTANCES = [1.8, 3.4, 5];

/**
 * The items of a dimension across the view close to the opening it measures, below it or above it (upright); null where its figure
 * would meet something everywhere. What it draws is taken out of the clear space. `body` is the view's own box on the sheet.
 */
export function insideDimension(dimension: ViewDimension, place: Place, metrics: Metrics, space: ClearSpace, body: Box): Item[] | null {
  for (const distance of DISTANCES) {
    for (const [way, y] of [[-1, dimension.beside?.[0]], [1, dimension.beside?.[1]]] as const) {
      if (y === undefined) continue;
      const level = y + (way * distance * metrics.lettering) / place.scale;
      const { items, figure } = itemsAt(dimension, y, level, way, place, metrics);
      const box = boundsOfItem(figure);
      if (!space.isFree(box) || !boxesOverlap(box, body)) continue;
      space.take(items);
      return items;
    }
  }
  return null;
}

function itemsAt(dimension: ViewDimension, y: number, level: number, way: 1 | -1, place: Place, metrics: Metrics): { items: Item[]; figure: Item } {
  const { a, b, text, ref } = dimension;
  const past = level + (way * metrics.past) / place.scale;
  const axis = place.turn === 0 ? "horizontal" : "vertical";
  const ends = [a.x, b.x].map((x) => onSheet(place, { x, y: level }));
  const along = ends.map((end) => (axis === "horizontal" ? end.x : end.y)).sort((first, second) => first - second);
  const [low = 0, high = 0] = along;
  const across = (axis === "horizontal" ? ends[0]?.y : ends[0]?.x) ?? 0;
  const line = dimensionLine({ axis, low, high, across, figureAt: figurePlace(low, high, text, metrics).at, text, ref }, metrics);
  const extensions = [a.x, b.x].map((x) => stroke("dimension", onSheet(place, { x, y }), onSheet(place, { x, y: past }), ref));
  const figure = line.find(({ kind }) => kind === "text");
  if (!figure) throw new RangeError("a dimension line without a figure");
  return { items: [...extensions, ...line], figure };
}
