// The pattern on the sheet: outline, openings, numbered stations, stretch-out line with its length, seam and face.

import type { Piece } from "../core/index";
import { boundsOf } from "./bounds";
import { dimensionLine } from "./dimensionLine";
import type { Item, TextItem } from "./display";
import type { Figures } from "./figures";
import { textWidth } from "./lettering";
import type { Metrics } from "./metrics";
import { patternEdges } from "./patternOutline";
import { type Place, onSheet } from "./place";
import { stationLines } from "./stationLines";
import { stationNumbers } from "./stationNumbers";
import { stroke } from "./strokes";
import type { DrawingWords } from "./words";

/**
 * The items of a pattern placed on the sheet. A lying pipe's pattern is tipped over to the right with it: elements run to the right,
 * station 0 is at the top. `face` says which face looks up.
 */
export function patternBlock(
  piece: Piece, face: "inside" | "outside", place: Place, metrics: Metrics, figures: Figures, words: DrawingWords,
): Item[] {
  const { girth } = piece.pattern;
  const numbers = stationNumbers(piece, place, metrics);
  const stretchOut = stroke("stretch-out", onSheet(place, { x: 0, y: 0 }), onSheet(place, { x: girth, y: 0 }), { clause: "stations" });
  const body: Item[] = [stretchOut, ...stationLines(piece, place, metrics), ...patternEdges(piece, place), ...numbers];
  const note = face === "inside" ? words.insideUp : words.outsideUp;
  return [...body, ...seamWords(piece, place, metrics, words), ...stretchOutLength(piece, body, place, metrics, `${words.stretchOut} ${figures.length(girth)}`, note)];
}

/** The stretch-out's dimension below (upright) or left (lying) of everything else; the face is named on the other side of its line. */
function stretchOutLength(piece: Piece, body: readonly Item[], place: Place, metrics: Metrics, text: string, note: string): Item[] {
  const { first, past, gap, lettering } = metrics;
  const box = boundsOf(body);
  const upright = place.turn === 0;
  const ends = [piece.stations[0], piece.stations.at(-1)].map((station) => onSheet(place, { x: station?.girth ?? 0, y: station?.bottom ?? 0 }));
  const across = (upright ? box.bottom : box.left) - first + lettering;
  const marks = ends.map((end) => (upright ? end.x : end.y)).sort((a, b) => a - b);
  const low = marks[0] ?? 0, high = marks[1] ?? 0;
  const middle = (low + high) / 2;
  const line = dimensionLine({
    axis: upright ? "horizontal" : "vertical", low, high, across, figureAt: middle, text, ref: { clause: "stations", field: null },
  }, metrics);
  const extensions = ends.map((end) => stroke("dimension", end, upright ? { x: end.x, y: across - past } : { x: across - past, y: end.y }));
  const face: TextItem = {
    kind: "text", pen: "lettering", text: note, height: lettering, align: "middle", turn: upright ? 0 : Math.PI / 2,
    at: upright ? { x: middle, y: across - gap - lettering } : { x: across + gap + lettering, y: middle },
  };
  return [...extensions, ...line, face];
}

/** The word beside both seam edges, in the middle of their longest kept stretch, where it has room between the numbers. */
function seamWords(piece: Piece, place: Place, metrics: Metrics, words: DrawingWords): TextItem[] {
  const { gap, lettering } = metrics;
  const upright = place.turn === 0;
  return [piece.stations[0], piece.stations.at(-1)].flatMap((station, i) => {
    const kept = (i === 0 ? station?.after : station?.before) ?? [];
    const [stretch] = [...kept].sort((a, b) => b.to - b.from - (a.to - a.from));
    const needed = textWidth(words.seam, lettering) + 2 * (lettering + gap);
    if (!station || !stretch || (stretch.to - stretch.from) * place.scale < needed) return [];
    const { x, y } = onSheet(place, { x: station.girth, y: (stretch.from + stretch.to) / 2 });
    const at = upright ? { x: i === 0 ? x - gap : x + gap + lettering, y } : { x, y: i === 0 ? y + gap : y - gap - lettering };
    return [{ kind: "text", pen: "lettering", text: words.seam, height: lettering, align: "middle", turn: upright ? Math.PI / 2 : 0, at, ref: { clause: "seam" } }];
  });
}
