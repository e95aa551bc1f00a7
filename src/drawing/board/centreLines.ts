// Centre lines: the axis, the cross of the circle, the centres of the openings. They run a little past what they belong to.

import type { Vec2 } from "../../core/index";
import type { Item, PathItem, Ref } from "../display";
import type { Metrics } from "../metrics";
import type { OpeningPlace } from "../view/openingPlaces";
import { type Place, onSheet } from "../place";
import { stroke } from "../strokes";
import { type Broadside, type EndOn, sheetAngle, sideways } from "../view/views";

/** What a centre line needs to know of its view. */
export interface CentreLineSetting {
  readonly place: Place;
  readonly radius: number;
  readonly metrics: Metrics;
}

/**
 * The axis of a broadside view over the heights `reach`, left out where `taken` (heights of a seam on the axis) is drawn,
 * and the centre lines of openings, as far as the piece reaches.
 */
export function broadsideCentreLines(
  setting: CentreLineSetting, view: Broadside, reach: readonly [number, number],
  taken: readonly { from: number; to: number }[], openings: readonly OpeningPlace[],
): Item[] {
  const { place, radius, metrics } = setting;
  const past = metrics.past / place.scale;
  const line = (from: Vec2, to: Vec2, ref: Ref) => stroke("centre line", onSheet(place, from), onSheet(place, to), ref);
  const axis: PathItem[] = [];
  let from = reach[0] - past;
  for (const stretch of [...taken, { from: reach[1] + past, to: Infinity }]) {
    if (stretch.from > from) axis.push(line({ x: 0, y: from }, { x: 0, y: stretch.from }, { clause: "part" }));
    from = stretch.to;
  }
  const drawn = new Set<string>();
  const crosses = openings.flatMap(({ cut, theta, halfLength, halfWidth }) => {
    const x = sideways(view, radius, theta);
    const key = `${x.toFixed(6)}/${cut.height}`;
    if (drawn.has(key)) return [];
    drawn.add(key);
    const ref: Ref = { clause: `cut:${cut.id}` };
    const seen = halfWidth * Math.abs(Math.cos(theta - view.facing));
    const low = Math.max(cut.height - halfLength, reach[0]) - past, high = Math.min(cut.height + halfLength, reach[1]) + past;
    if (cut.height < reach[0] - past || cut.height > reach[1] + past) return [];
    const level = line({ x: x - seen - past, y: cut.height }, { x: x + seen + past, y: cut.height }, ref);
    const onAxis = Math.abs(x) < 1e-6;
    const atContour = radius - Math.abs(x) < 1e-3 * radius;
    if (onAxis || atContour) return [level];
    return [level, line({ x, y: low }, { x, y: high }, ref)];
  });
  return [...axis, ...crosses];
}

/** The cross of an end-on view, and a short line across the wall at the direction of each opening off the cross. */
export function endOnCentreLines(setting: CentreLineSetting, view: EndOn, openings: readonly OpeningPlace[]): Item[] {
  const { place: { origin, scale }, radius, metrics } = setting;
  const reach = radius * scale + metrics.past;
  const at = (angle: number, distance: number) => ({ x: origin.x + distance * Math.cos(angle), y: origin.y + distance * Math.sin(angle) });
  const part: Ref = { clause: "part" };
  const cross = [
    stroke("centre line", { x: origin.x - reach, y: origin.y }, { x: origin.x + reach, y: origin.y }, part),
    stroke("centre line", { x: origin.x, y: origin.y - reach }, { x: origin.x, y: origin.y + reach }, part),
  ];
  const offCross = openings.filter(({ theta }) => Math.abs(Math.sin(2 * theta)) > 1e-6);
  return [...cross, ...offCross.map(({ cut, theta }) => {
    const angle = sheetAngle(view, theta);
    const inner = radius * scale - 3 * metrics.past;
    return stroke("centre line", at(angle, inner), at(angle, reach), { clause: `cut:${cut.id}` });
  })];
}
