// What is pointed out on a miniature: sizes, angles, arrows, places, lines.

import type { Vec2 } from "../../core/index";
import type { ArrowheadItem, Item } from "../display";
import { type Place, onSheet } from "../place";
import { arcStroke, stroke } from "../strokes";

/** Points in the coordinates of the view, mm; angles in degrees, anticlockwise from the right. */
export type Mark =
  /** A dimension from one point to another; its line stands `beside` them, to the left of the way there. */
  | { readonly kind: "size"; readonly from: Vec2; readonly to: Vec2; readonly beside: number }
  /** An angle with an arrowhead at its end, or at both. */
  | { readonly kind: "angle"; readonly centre: Vec2; readonly radius: number; readonly from: number; readonly to: number; readonly both?: true }
  /** An arrow to a point. */
  | { readonly kind: "arrow"; readonly from: Vec2; readonly to: Vec2 }
  /** A stretch of the drawing itself. */
  | { readonly kind: "line"; readonly from: Vec2; readonly to: Vec2 }
  /** What the size or angle is measured from. */
  | { readonly kind: "thin"; readonly from: Vec2; readonly to: Vec2 }
  | { readonly kind: "circle"; readonly centre: Vec2; readonly radius: number; readonly thin?: true }
  | { readonly kind: "place"; readonly at: Vec2 };

/** Sheet mm. */
const ARROW = 3.2;
const DOT = 1;

/** Every point a mark reaches, for finding room. */
export function markPoints(marks: readonly Mark[]): Vec2[] {
  return marks.flatMap((mark): Vec2[] => {
    switch (mark.kind) {
      case "size":
        return [mark.from, mark.to, ...ends(mark)];
      case "angle":
        return samples(mark.from, mark.to).map((angle) => round(mark.centre, mark.radius, angle));
      case "circle":
        return samples(0, 360).map((angle) => round(mark.centre, mark.radius, angle));
      case "place":
        return [mark.at];
      default:
        return [mark.from, mark.to];
    }
  });
}

/** The marks on the sheet. Arrowheads and dots keep their size whatever the scale. */
export function markItems(marks: readonly Mark[], place: Place): Item[] {
  return marks.flatMap((mark): Item[] => {
    switch (mark.kind) {
      case "size":
        return sizeItems(mark, place);
      case "angle":
        return angleItems(mark, place);
      case "arrow":
        return [stroke("station in hand", onSheet(place, mark.from), onSheet(place, mark.to)), head(onSheet(place, mark.to), directionOf(mark.from, mark.to))];
      case "line":
        return [stroke("station in hand", onSheet(place, mark.from), onSheet(place, mark.to))];
      case "thin":
        return [stroke("dimension", onSheet(place, mark.from), onSheet(place, mark.to))];
      case "circle":
        return [{ kind: "circle", pen: mark.thin ? "dimension" : "station in hand", centre: onSheet(place, mark.centre), radius: mark.radius * place.scale }];
      case "place":
        return [{ kind: "circle", pen: "station in hand", centre: onSheet(place, mark.at), radius: DOT }];
    }
  });
}

type Size = Extract<Mark, { kind: "size" }>;

/** The two ends of a dimension line. */
function ends({ from, to, beside }: Size): [Vec2, Vec2] {
  const way = directionOf(from, to) + Math.PI / 2;
  const aside = ({ x, y }: Vec2): Vec2 => ({ x: x + beside * Math.cos(way), y: y + beside * Math.sin(way) });
  return [aside(from), aside(to)];
}

function sizeItems(mark: Size, place: Place): Item[] {
  const [from, to] = ends(mark).map((end) => onSheet(place, end)) as [Vec2, Vec2];
  const along = directionOf(from, to);
  const inside = Math.hypot(to.x - from.x, to.y - from.y) > 2.5 * ARROW;
  const out = (tip: Vec2, way: number) => stroke("station in hand", tip, { x: tip.x + 1.6 * ARROW * Math.cos(way), y: tip.y + 1.6 * ARROW * Math.sin(way) });
  return [
    stroke("dimension", onSheet(place, mark.from), from),
    stroke("dimension", onSheet(place, mark.to), to),
    stroke("station in hand", from, to),
    ...(inside ? [head(from, along + Math.PI), head(to, along)] : [out(from, along + Math.PI), out(to, along), head(from, along), head(to, along + Math.PI)]),
  ];
}

function angleItems({ centre, radius, from, to, both }: Extract<Mark, { kind: "angle" }>, place: Place): Item[] {
  const middle = onSheet(place, centre);
  const r = radius * place.scale;
  const [start, end] = [(from * Math.PI) / 180, (to * Math.PI) / 180];
  const sense = Math.sign(to - from);
  // A straight arrowhead on an arc lies along its chord.
  const lean = ARROW / (2 * r);
  const at = (angle: number, way: 1 | -1) => head(round(middle, r, (angle * 180) / Math.PI), angle + way * sense * (Math.PI / 2 - lean));
  return [arcStroke("station in hand", middle, r, start, end), at(end, 1), ...(both ? [at(start, -1)] : [])];
}

function head(tip: Vec2, direction: number): ArrowheadItem {
  return { kind: "arrowhead", pen: "station in hand", tip, direction, length: ARROW };
}

function directionOf(from: Vec2, to: Vec2): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

function round({ x, y }: Vec2, radius: number, angle: number): Vec2 {
  return { x: x + radius * Math.cos((angle * Math.PI) / 180), y: y + radius * Math.sin((angle * Math.PI) / 180) };
}

function samples(from: number, to: number): number[] {
  return Array.from({ length: 25 }, (_, i) => from + ((to - from) * i) / 24);
}
