// Sizes of openings that no view shows in one plane: written out, with an arrow to the opening.

import { type Vec2, segmentPoint } from "../../core/index";
import { boundsOf, boundsOfItem } from "../bounds";
import { type Box, joinBoxes } from "../box";
import type { ClearSpace } from "../clearSpace";
import type { Item } from "../display";
import { leader } from "./leader";
import type { Metrics } from "../metrics";
import { type Place, onSheet, segmentOnSheet } from "../place";
import type { ViewNote } from "./viewMeasures";
import type { ViewLine } from "../view/viewGeometry";

const WAYS = [45, 135, -45, -135, 60, 120, -60, -120, 30, 150, -30, -150].map((degrees) => (degrees * Math.PI) / 180);
const LENGTHS = [2.5, 4, 6, 9];

/** The note with its arrow in a clear place, one that adds little to `room` (what the view takes already); nothing when there is none. */
export function sizeNote(note: ViewNote, lines: readonly ViewLine[], place: Place, metrics: Metrics, space: ClearSpace, room: Box): Item[] {
  let best: { items: Item[]; cost: number } = { items: [], cost: Infinity };
  for (const { tip, out } of arrowPlaces(note, lines, place)) {
    for (const length of LENGTHS) {
      const reach = length * metrics.arrow;
      if (reach >= best.cost) break;
      const items = noteAt(note, tip, { x: tip.x + reach * out.x, y: tip.y + reach * out.y }, metrics);
      const cost = growth(room, boundsOf(items)) + reach;
      const written = items.filter(({ kind }) => kind === "text");
      if (cost < best.cost && written.every((text) => space.isFree(boundsOfItem(text)))) best = { items, cost };
    }
  }
  space.take(best.items);
  return best.items;
}

/** Points of the opening's edge and ways outward from them. */
function arrowPlaces(note: ViewNote, lines: readonly ViewLine[], place: Place): { tip: Vec2; out: Vec2 }[] {
  const centre = onSheet(place, note.centre);
  const edges = lines.filter(({ ref }) => ref.clause === note.ref.clause).flatMap(({ segments }) => segments);
  return edges.flatMap((edge) => {
    const tip = segmentPoint(segmentOnSheet(place, edge), 0.5);
    const from = { x: tip.x - centre.x, y: tip.y - centre.y };
    return WAYS.map((way) => ({ tip, out: { x: Math.cos(way), y: Math.sin(way) } }))
      .filter(({ out }) => from.x * out.x + from.y * out.y > 0.5 * Math.hypot(from.x, from.y));
  });
}

function noteAt({ text, under, ref }: ViewNote, tip: Vec2, end: Vec2, metrics: Metrics): Item[] {
  const items = leader(tip, end, text, ref, metrics);
  if (under === undefined) return items;
  return [...items, { ...items[3], text: under, at: { x: end.x, y: end.y - metrics.gap - metrics.lettering } }];
}

/** By how much, in mm of width and height, a box would have to grow. */
function growth(room: Box, box: Box): number {
  const whole = joinBoxes(room, box);
  return whole.right - whole.left + whole.top - whole.bottom - (room.right - room.left + room.top - room.bottom);
}
