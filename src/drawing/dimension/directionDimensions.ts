// Directions off the cross of the circle: the angle from the front at which an opening or a cut stands, inside the circle;
// left out where the circle has no room for its figure.

import type { Job, Piece } from "../../core/index";
import { boundsOfItem } from "../bounds";
import type { Box } from "../box";
import { type ClearSpace, clearSpace } from "../clearSpace";
import type { Item, Ref, TextItem } from "../display";
import type { Figures } from "../figures";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import type { Place } from "../place";
import { arcStroke, stroke } from "../strokes";
import { type EndOn, sheetAngle } from "../view/views";

/** Places along the arc tried for its figure. */
const PARTS = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

/** Radii of the arc tried, as parts of the circle's. */
const RADII = [0.6, 0.45, 0.75, 0.3, 0.85];

/** Arc, arrowhead and figure for each cut that is on and looks neither to the front, the right, the back nor the left. */
export function directionDimensions(
  job: Job, piece: Piece, view: EndOn, place: Place, figures: Figures, metrics: Metrics, space: ClearSpace,
): Item[] {
  const cutting = new Set(piece.trimmed.edges.flatMap(({ owner }) => (owner.kind === "cut" ? [owner.id] : [])));
  const seen = new Set<number>();
  const turned = job.part.cuts.filter(({ id, direction }) => {
    const fresh = cutting.has(id) && direction % 90 !== 0 && !seen.has(direction);
    if (fresh) seen.add(direction);
    return fresh;
  });
  return turned.flatMap(({ id, direction }) => {
    for (const part of RADII) {
      const room = piece.form.cutRadius * place.scale - metrics.tick;
      const items = directionArc(direction, { clause: `cut:${id}`, field: "direction" }, part * room, room, view, place, figures, metrics, space);
      space.take(items);
      if (items.length > 0) return items;
    }
    return [];
  });
}

/** Nothing when the figure finds no clear place at this radius. */
function directionArc(
  direction: number, ref: Ref, radius: number, room: number, view: EndOn, place: Place, figures: Figures, metrics: Metrics, space: ClearSpace,
): Item[] {
  const turn = ((((direction % 360) + 360) % 360) * Math.PI) / 180;
  const from = sheetAngle(view, 0), to = sheetAngle(view, turn);
  const at = (angle: number, distance: number) => ({ x: place.origin.x + distance * Math.cos(angle), y: place.origin.y + distance * Math.sin(angle) });
  const ray = stroke("dimension", place.origin, at(to, radius + metrics.past), ref);
  const arc = arcStroke("dimension", place.origin, radius, from, to, ref);
  const ahead = Math.sign(to - from) * (Math.PI / 2 - metrics.arrow / radius / 2);
  const head: Item = { kind: "arrowhead", pen: "dimension", tip: at(to, radius), direction: to + ahead, length: metrics.arrow, ref };
  if (space.meetsFigures([ray, arc])) return [];
  const candidates = PARTS.flatMap((part) => [-1, 1].map((side) => figureAt(from + part * (to - from), radius, side, direction, ref, place, figures, metrics)));
  const inside = candidates.filter((candidate) => liesWithin(boundsOfItem(candidate), place, room) && clearOf(boundsOfItem(candidate), [ray, arc]));
  const figure = inside.find((candidate) => space.isFree(boundsOfItem(candidate)));
  return figure ? [ray, arc, head, figure] : [];
}

/** The figure beside its arc, towards the axis (side -1) or away from it. */
function figureAt(
  angle: number, radius: number, side: number, direction: number, ref: Ref, { origin }: Place, figures: Figures, metrics: Metrics,
): TextItem {
  const text = figures.angle(direction);
  const reach = (Math.abs(Math.cos(angle)) * textWidth(text, metrics.lettering) + Math.abs(Math.sin(angle)) * metrics.lettering) / 2;
  const distance = radius + side * (reach + metrics.gap);
  return {
    kind: "text", pen: "lettering", text, height: metrics.lettering, align: "middle", turn: 0, ref,
    at: { x: origin.x + distance * Math.cos(angle), y: origin.y + distance * Math.sin(angle) - metrics.lettering / 2 },
  };
}

function liesWithin({ left, right, bottom, top }: Box, { origin }: Place, radius: number): boolean {
  return Math.hypot(Math.max(right - origin.x, origin.x - left), Math.max(top - origin.y, origin.y - bottom)) < radius;
}

function clearOf(box: Box, items: readonly Item[]): boolean {
  const own = clearSpace(0.2);
  own.take(items);
  return own.isFree(box);
}
