// The angle of a plane cut from square, in the view that sees the plane as a line.

import type { Job, PlaneCut } from "../../core/index";
import { boundsOfItem } from "../bounds";
import type { ClearSpace } from "../clearSpace";
import type { Item, Ref, TextItem } from "../display";
import type { Figures } from "../figures";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import { type Place, onSheet } from "../place";
import { arcStroke, stroke } from "../strokes";
import type { ViewLine } from "../view/viewGeometry";
import type { Broadside, Views } from "../view/views";

/** Radius of the arc, and length of the arc that has room for two arrowheads; in arrowhead lengths. */
const ARC = 5;
const ROOM = 2.4;

/** Radii tried, as parts of the usual one, to keep clear of figures. */
const RADII = [1, 0.7, 1.4, 0.5];

/** Plane cuts that appear as a line in `view`, and in no view before it. */
export function cutsSeenAsLines(job: Job, views: Views, view: Broadside): PlaneCut[] {
  const seesEdge = (other: Broadside, cut: PlaneCut) => Math.abs(Math.cos((cut.direction * Math.PI) / 180 - other.facing)) < 1e-6;
  return job.part.cuts.filter((cut): cut is PlaneCut => {
    if (cut.kind !== "plane" || !cut.on || cut.angle === 0 || !seesEdge(view, cut)) return false;
    return view === views.front || !(views.front.kind === "broadside" && seesEdge(views.front, cut));
  });
}

/**
 * The angle at the end of the cut's line that leaves its arc over the material taken away: at the high end of a top cut, the low
 * end of a bottom cut. Nothing when the cut left no straight line in the view.
 */
export function angleDimension(
  cut: PlaneCut, lines: readonly ViewLine[], place: Place, figures: Figures, metrics: Metrics, space: ClearSpace,
): Item[] {
  const ref: Ref = { clause: `cut:${cut.id}`, field: "angle" };
  const line = lines.filter((one) => one.ref.clause === ref.clause).flatMap(({ segments }) => segments).find(({ kind }) => kind === "line");
  if (!line) return [];
  const top = cut.end === "top";
  const [vertex, other] = line.from.y > line.to.y === top ? [line.from, line.to] : [line.to, line.from];
  const inward = Math.sign(other.x - vertex.x);
  const at = onSheet(place, vertex);
  const tip = onSheet(place, other);
  const square = onSheet(place, { x: vertex.x + inward, y: vertex.y });
  const from = Math.atan2(square.y - at.y, square.x - at.x);
  const sweep = wrapHalf(Math.atan2(tip.y - at.y, tip.x - at.x) - from);
  const length = place.scale * Math.hypot(other.x - vertex.x, other.y - vertex.y);
  const usual = Math.min(Math.max(ARC, ROOM / Math.abs(sweep)) * metrics.arrow, 0.8 * length);
  const draw = (radius: number): Item[] => {
    const reach = radius + metrics.past;
    const reference = stroke("dimension", at, { x: at.x + reach * Math.cos(from), y: at.y + reach * Math.sin(from) }, ref);
    return [reference, arcStroke("dimension", at, radius, from, from + sweep, ref), ...arrowheads(at, radius, from, sweep, metrics, ref)];
  };
  const radius = RADII.map((part) => part * usual).find((one) => !space.meetsFigures(draw(one))) ?? usual;
  const items = draw(radius);
  space.take(items);
  const text = figureBeside(at, radius, from, sweep, figures.angle(cut.angle), metrics, ref, space);
  space.take([text]);
  return [...items, text];
}

function arrowheads(at: { x: number; y: number }, radius: number, from: number, sweep: number, metrics: Metrics, ref: Ref): Item[] {
  if (Math.abs(sweep) * radius < 2.2 * metrics.arrow) return [];
  const lean = metrics.arrow / radius / 2;
  const side = Math.sign(sweep);
  return ([[from, -1], [from + sweep, 1]] as const).map(([angle, end]) => ({
    kind: "arrowhead", pen: "dimension", ref, length: metrics.arrow,
    tip: { x: at.x + radius * Math.cos(angle), y: at.y + radius * Math.sin(angle) },
    direction: angle + side * end * (Math.PI / 2 - lean),
  }));
}

/** The figure in the first clear place: inside the arc, outside it, or beyond the reference line; else in the first. */
function figureBeside(
  at: { x: number; y: number }, radius: number, from: number, sweep: number, text: string, metrics: Metrics, ref: Ref, space: ClearSpace,
): TextItem {
  const half = textWidth(text, metrics.lettering) / 2;
  const distances = [radius - half - 2 * metrics.gap, radius + half + 2 * metrics.gap, radius - 2 * half, radius + 2 * half, radius + 3 * half];
  const turns = [0.5, 0.35, 0.65, -0.3, -0.6, 1.3].map((part) => from + part * sweep);
  const beyond = from - Math.sign(sweep) * 0.35;
  const candidates = [...turns, beyond].flatMap((angle) => distances.map((distance): TextItem => ({
    kind: "text", pen: "lettering", text, height: metrics.lettering, align: "middle", turn: 0, ref,
    at: { x: at.x + distance * Math.cos(angle), y: at.y + distance * Math.sin(angle) - metrics.lettering / 2 },
  })));
  const [first] = candidates;
  if (!first) throw new RangeError("no place for a figure");
  return candidates.find((candidate) => space.isFree(boundsOfItem(candidate))) ?? first;
}

function wrapHalf(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}
