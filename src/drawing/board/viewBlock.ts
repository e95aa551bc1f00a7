// One view on the sheet: its lines, centre lines, stations and dimensions.

import type { Development, Piece } from "../../core/index";
import { angleDimension, cutsSeenAsLines } from "../dimension/angleDimensions";
import { boundsOf } from "../bounds";
import { broadsideCentreLines, endOnCentreLines } from "./centreLines";
import { circleStations } from "./circleStations";
import { joinBoxes } from "../box";
import { clearedFigures } from "../dimension/clearedFigures";
import { clearSpace } from "../clearSpace";
import { directionDimensions } from "../dimension/directionDimensions";
import type { Item, PathItem } from "../display";
import type { Figures } from "../figures";
import { insideDimension } from "../dimension/insideDimension";
import { type LaneSide, type LinearDimension, laneDimensions } from "../dimension/lanes";
import type { Metrics } from "../metrics";
import { openingPlaces } from "../view/openingPlaces";
import { type Place, onSheet, segmentOnSheet } from "../place";
import type { ViewDimension, ViewMeasures } from "../dimension/viewMeasures";
import { radiusDimensions } from "../dimension/radiusDimensions";
import { sizeNote } from "../dimension/sizeNotes";
import type { ViewLine } from "../view/viewGeometry";
import type { Broadside, EndOn, Views } from "../view/views";

/** Everything a view is drawn from, but where it stands. */
export interface ViewPlan {
  readonly development: Development;
  readonly piece: Piece;
  readonly views: Views;
  readonly view: Broadside | EndOn;
  readonly lines: readonly ViewLine[];
  readonly measures: ViewMeasures;
}

/** The items of one view placed on the sheet. */
export function viewBlock(plan: ViewPlan, place: Place, metrics: Metrics, figures: Figures): Item[] {
  const { view } = plan;
  return view.kind === "broadside" ? broadsideBlock(plan, view, place, metrics, figures) : endOnBlock(plan, view, place, metrics, figures);
}

function endOnBlock(plan: ViewPlan, view: EndOn, place: Place, metrics: Metrics, figures: Figures): Item[] {
  const { piece, development: { job } } = plan;
  const setting = { place, radius: piece.form.cutRadius, metrics };
  const lines = linesOnSheet(plan.lines, place);
  const centres = endOnCentreLines(setting, view, openingPlaces(job, piece));
  const stations = circleStations(piece, view, place, metrics);
  const space = clearSpace(metrics.gap / 2);
  space.take([...lines, ...centres, ...stations]);
  return [...centres, ...lines, ...stations, ...directionDimensions(job, piece, view, place, figures, metrics, space)];
}

function broadsideBlock(plan: ViewPlan, view: Broadside, place: Place, metrics: Metrics, figures: Figures): Item[] {
  const { piece, development: { job } } = plan;
  const setting = { place, radius: piece.form.cutRadius, metrics };
  const lines = linesOnSheet(plan.lines, place);
  const taken = plan.lines.flatMap(({ pen, segments: [line] }) =>
    pen === "seam" && line && Math.abs(line.from.x) < 1e-6 ? [{ from: line.from.y, to: line.to.y }] : []);
  const centres = broadsideCentreLines(setting, view, piece.pattern.height, taken, openingPlaces(job, piece));
  const body = boundsOf(lines);
  const lanes = (lengths: readonly ViewDimension[]) => laneDimensions(lengths.map((length) => inLane(length, piece, place)), body, metrics);
  const outer = plan.measures.lengths.filter(({ beside }) => !beside);
  const space = clearSpace(metrics.gap / 2);
  space.take([...lines, ...centres, ...lanes(outer)]);
  const angles = cutsSeenAsLines(job, plan.views, view).flatMap((cut) => angleDimension(cut, plan.lines, place, figures, metrics, space));
  const radii = radiusDimensions(job, plan.lines, place, figures, metrics, space);
  const widths = plan.measures.lengths.filter(({ beside }) => beside).map((length) => ({ length, items: insideDimension(length, place, metrics, space, body) }));
  const outside = lanes([...outer, ...widths.filter(({ items }) => !items).map(({ length }) => length)]);
  const inside = widths.flatMap(({ items }) => items ?? []);
  const room = joinBoxes(body, boundsOf(outside));
  const notes = plan.measures.notes.flatMap((note) => sizeNote(note, plan.lines, place, metrics, space, room));
  return clearedFigures([...centres, ...lines, ...outside, ...inside, ...angles, ...radii, ...notes]);
}

function inLane({ along, group, a, b, text, ref }: ViewDimension, piece: Piece, place: Place): LinearDimension {
  const sides = sidesFor(piece.form.attitude);
  return { side: along === "across" ? sides.across : sides[group], from: onSheet(place, a), to: onSheet(place, b), text, ref };
}

function linesOnSheet(lines: readonly ViewLine[], place: Place): PathItem[] {
  return lines.map(({ pen, segments, closed, ref }) => ({
    kind: "path", pen, closed, ref, segments: segments.map((segment) => segmentOnSheet(place, segment)),
  }));
}

/** On which side of the sheet heights and diameters stand, so that the view stays free towards the pattern. */
function sidesFor(attitude: "upright" | "lying"): Record<"ends" | "openings" | "across", LaneSide> {
  return attitude === "upright" ? { ends: "left", openings: "right", across: "below" } : { ends: "below", openings: "below", across: "left" };
}
