// The stations round the circle of an end-on view: a tick across the circle, a number outside it, where numbers fit.

import type { Piece, Vec2 } from "../core/index";
import { type Box, boxesOverlap, growBox } from "./box";
import type { Item, TextItem } from "./display";
import { textBox, textWidth } from "./lettering";
import type { Metrics } from "./metrics";
import type { Place } from "./place";
import { stroke } from "./strokes";
import { STEPS } from "./thinning";
import { type EndOn, sheetAngle } from "./views";

/** Ticks and numbers of all stations but the closing one, which is station 0 again. */
export function circleStations(piece: Piece, view: EndOn, place: Place, metrics: Metrics): Item[] {
  const stations = piece.stations.map((station, index) => ({ station, index })).filter(({ station }) => station.mark !== "closing");
  const radius = piece.form.radius * place.scale;
  const at = (theta: number, distance: number): Vec2 => {
    const angle = sheetAngle(view, theta);
    return { x: place.origin.x + distance * Math.cos(angle), y: place.origin.y + distance * Math.sin(angle) };
  };
  const ticks = stations.map(({ station: { theta }, index }) => stroke(
    "station", at(theta, radius - metrics.tick), at(theta, radius + metrics.tick), { clause: "stations", station: index },
  ));
  const numbers = stations.map(({ station: { theta, label }, index }) => numberAt(at, sheetAngle(view, theta), theta, label, index, radius, metrics));
  const even = stations.flatMap(({ station }, i) => (station.mark === "even" ? numbers.slice(i, i + 1) : []));
  const shown = thinned(even, metrics);
  const extra = stations.flatMap(({ station }, i) => (station.mark === "even" ? [] : numbers.slice(i, i + 1)));
  for (const number of extra) if (fits(number, shown, metrics)) shown.push(number);
  return [...ticks, ...shown];
}

/** A number whose box stands clear of the circle, its ticks and the ends of the centre lines, middle on the ray. */
function numberAt(
  at: (theta: number, distance: number) => Vec2, angle: number, theta: number, text: string, station: number, radius: number, metrics: Metrics,
): TextItem {
  const half = { x: textWidth(text, metrics.lettering) / 2, y: metrics.lettering / 2 };
  const reach = Math.abs(Math.cos(angle)) * half.x + Math.abs(Math.sin(angle)) * half.y;
  const middle = at(theta, radius + metrics.past + metrics.gap * 0.6 + reach);
  return {
    kind: "text", pen: "lettering", text, height: metrics.lettering, align: "middle", turn: 0,
    at: { x: middle.x, y: middle.y - half.y }, ref: { clause: "stations", station },
  };
}

/** Every number, or every second, third, … of them, so that none touches its neighbour. */
function thinned(numbers: readonly TextItem[], metrics: Metrics): TextItem[] {
  for (const step of STEPS) {
    const chosen = numbers.filter((_, i) => i % step === 0 && (i === 0 || numbers.length - i >= step * 0.5));
    if (chosen.every((number, i) => fits(number, [...chosen.slice(0, i)], metrics))) return chosen;
  }
  return numbers.slice(0, 1);
}

function fits(number: TextItem, others: readonly TextItem[], metrics: Metrics): boolean {
  const box: Box = growBox(textBox(number), metrics.gap / 2);
  return !others.some((other) => boxesOverlap(box, textBox(other)));
}
