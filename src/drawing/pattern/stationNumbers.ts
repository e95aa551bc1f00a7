// The numbers of the stations along both ends of a pattern: in a row along the stretch-out line, and riding over the far edge
// clear of it. The two numbers of the seam stand outside its corners. What is added beyond the net edges is kept clear of too.

import { type Loop, type Piece, type Station, type Vec2, flattenSegments } from "../../core/index";
import { type Box, boxesOverlap, growBox } from "../box";
import type { TextItem } from "../display";
import { type Outlines, reachWithin } from "./envelope";
import { textBox, textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import { patternLoops } from "./patternOutline";
import { type Place, onSheet } from "../place";
import { thinned } from "../thinning";

/** Straightness of the outline for finding clear places, sheet mm. */
const COARSE = 0.05;

/** Number items over the top of the loops (those of the pattern, or the lines it is cut along), where an element is kept, and under the stretch-out line. */
export function stationNumbers(piece: Piece, loops: readonly Loop[], place: Place, metrics: Metrics): TextItem[] {
  const outlines = patternLoops(loops, place).filter(({ pen }) => pen === "outline").map(({ segments }) => flattenSegments(segments, COARSE));
  const along = alongOn(place);
  const foot = Math.min(along(onSheet(place, { x: 0, y: 0 })), ...outlines.flat().map(along));
  return ([1, -1] as const).flatMap((end) => alongEnd(piece, place, metrics, { outlines, foot }, end));
}

/** Outlines of the pattern, and the lowest place of them or the stretch-out line along the elements. */
interface Rims {
  readonly outlines: Outlines;
  readonly foot: number;
}

/** Along the elements of the pattern where it stands. */
function alongOn({ turn }: Place): (point: Vec2) => number {
  return turn === 0 ? ({ y }) => y : ({ x }) => x;
}

function alongEnd(piece: Piece, place: Place, metrics: Metrics, rims: Rims, end: 1 | -1): TextItem[] {
  const numbered = piece.stations.map((station, index) => ({ station, index })).filter(({ station: { top } }) => end < 0 || top !== null);
  const isExtra = ({ station: { mark } }: { readonly station: Station }) => mark === "critical" || mark === "added";
  const count = piece.stations.filter(({ mark }) => mark === "even").length;
  const corners = [0, piece.pattern.girth].map((girth) => onSheet(place, { x: girth, y: 0 }));
  const isClear = (number: TextItem) => end > 0 || clearsCorners(number, corners, place, metrics);
  const even = numbered.filter((one) => !isExtra(one)).map(({ station, index }) => {
    const number = numberOf(piece, index, place, metrics, rims, end, 0);
    return { station, index, number, box: textBox(number) };
  }).filter(({ number }) => isClear(number));
  const areApart = (chosen: readonly { box: Box }[]) => chosen.every(({ box }, i) => {
    const wide = growBox(box, metrics.gap / 2);
    return chosen.slice(Math.max(0, i - 3), i).every((other) => !boxesOverlap(wide, other.box));
  });
  const shown = thinned(even, count, ({ station }) => Number(station.label), ({ station, index }) => index === 0 || station.mark === "closing", areApart)
    .map(({ number }) => number);
  numbered.filter(isExtra).forEach(({ index }) => {
    const choice = [0, 1].map((row) => numberOf(piece, index, place, metrics, rims, end, row)).find((number) => fits(number, shown, metrics) && isClear(number));
    if (choice) shown.push(choice);
  });
  return shown;
}

/** The number of one station at one end; `row` moves it outward by whole rows. */
function numberOf(piece: Piece, index: number, place: Place, metrics: Metrics, { outlines, foot: lowest }: Rims, end: 1 | -1, row: number): TextItem {
  const station = piece.stations[index];
  if (!station) throw new RangeError(`no station ${index} among ${piece.stations.length}`);
  const { lettering, gap } = metrics;
  const upright = place.turn === 0;
  const across = ({ x, y }: Vec2) => (upright ? x : y);
  const along = alongOn(place);
  const foot = onSheet(place, { x: station.girth, y: (end > 0 ? station.top : station.bottom) ?? 0 });
  const width = textWidth(station.label, lettering);
  const half = (upright ? width : lettering) / 2;
  const outside = index === 0 ? -1 : station.mark === "closing" ? 1 : 0;
  const middle = across(foot) + (upright ? 1 : -1) * outside * (half + gap);
  const strip = [middle - half - gap / 2, middle + half + gap / 2] as const;
  const edge = (end > 0 ? Math.max(reachWithin(outlines, across, along, strip) ?? -Infinity, along(foot)) : lowest) + end * (gap + row * (lettering + gap));
  return {
    kind: "text", pen: "lettering", text: station.label, height: lettering, turn: 0, ref: { clause: "stations", station: index },
    align: upright ? "middle" : end > 0 ? "start" : "end",
    at: upright ? { x: middle, y: end > 0 ? edge : edge - lettering } : { x: edge, y: middle - lettering / 2 },
  };
}

/** Whether a number keeps clear of the extension lines that leave both corners of the seam. */
function clearsCorners(number: TextItem, corners: readonly Vec2[], { turn }: Place, metrics: Metrics): boolean {
  const { left, right, bottom, top } = growBox(textBox(number), metrics.gap / 3);
  return corners.every(({ x, y }) => (turn === 0 ? x <= left || x >= right : y <= bottom || y >= top));
}

function fits(number: TextItem, others: readonly TextItem[], metrics: Metrics): boolean {
  const box = growBox(textBox(number), metrics.gap / 2);
  return !others.some((other) => boxesOverlap(box, textBox(other)));
}
