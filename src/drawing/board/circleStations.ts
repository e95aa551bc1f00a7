// The stations round the circle of an end-on view: a tick across the circle, a number outside it, where numbers fit.

import type { Piece, Vec2 } from "../../core/index";
import { type Box, boxesOverlap, growBox } from "../box";
import type { Item, TextItem } from "../display";
import { textBox, textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import type { Place } from "../place";
import { stroke } from "../strokes";
import { stepFor, thinned } from "../thinning";
import { type EndOn, sheetAngle } from "../view/views";

/** Least distance between ticks, in gaps. */
const LEAST = 1;

/** Ticks and numbers of all stations but the closing one, which is station 0 again. */
export function circleStations(piece: Piece, view: EndOn, place: Place, metrics: Metrics): Item[] {
  const stations = piece.stations.map((station, index) => ({ station, index })).filter(({ station }) => station.mark !== "closing");
  const radius = piece.form.cutRadius * place.scale;
  const at = (theta: number, distance: number): Vec2 => {
    const angle = sheetAngle(view, theta);
    return { x: place.origin.x + distance * Math.cos(angle), y: place.origin.y + distance * Math.sin(angle) };
  };
  const count = stations.filter(({ station }) => station.mark === "even").length;
  const step = stepFor((2 * Math.PI * radius) / count, LEAST * metrics.gap);
  const ticks = stations.filter(({ station }) => station.mark !== "even" || Number(station.label) % step === 0).map(({ station: { theta }, index }) => stroke(
    "station", at(theta, radius - metrics.tick), at(theta, radius + metrics.tick), { clause: "stations", station: index },
  ));
  const numbers = stations.map(({ station, index }) => ({
    station, number: numberAt(at, sheetAngle(view, station.theta), station.theta, station.label, index, radius, metrics),
  }));
  const areApart = (chosen: readonly { number: TextItem }[]) =>
    chosen.every(({ number }, i) => fits(number, chosen.slice(0, i).map((other) => other.number), metrics));
  const even = numbers.filter(({ station }) => station.mark === "even");
  const shown = thinned(even, count, ({ station }) => Number(station.label), ({ station }) => station.label === "0", areApart).map(({ number }) => number);
  for (const { station, number } of numbers) if (station.mark !== "even" && fits(number, shown, metrics)) shown.push(number);
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

function fits(number: TextItem, others: readonly TextItem[], metrics: Metrics): boolean {
  const box: Box = growBox(textBox(number), metrics.gap / 2);
  return !others.some((other) => boxesOverlap(box, textBox(other)));
}
