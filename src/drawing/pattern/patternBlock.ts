// The pattern on the sheet: outline, openings, numbered stations, stretch-out line with its length, seam and face; what the shop adds,
// with its sums.

import type { Piece } from "../../core/index";
import { boundsOf } from "../bounds";
import type { Box } from "../box";
import { dimensionLine } from "../dimension/dimensionLine";
import type { Item, TextItem } from "../display";
import type { Figures } from "../figures";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import type { PatternAllowances } from "./patternAllowances";
import { patternEdges } from "./patternOutline";
import { type Place, onSheet, segmentOnSheet } from "../place";
import { stationLines } from "./stationLines";
import { stationNumbers } from "./stationNumbers";
import { stroke } from "../strokes";
import type { DrawingWords } from "../words";

/** Between lines of notes, and between the first of them and the dimension line, in gaps of the lettering. */
const NOTE_GAP = 2;

/** Free between the numbers of the stations and the lettering of the stretch-out, in lettering heights. */
const AIR = 1;

/**
 * The items of a pattern placed on the sheet. A lying pipe's pattern is tipped over to the right with it: elements run to the right,
 * station 0 is at the top. With `added` the lines it is cut along are drawn wide, and the net edges under them as bend lines; `more`
 * is said below the stretch-out.
 */
export function patternBlock(
  piece: Piece, place: Place, metrics: Metrics, figures: Figures, words: DrawingWords, added: PatternAllowances | null = null, more: readonly string[] = [],
): Item[] {
  const { girth, loops: net, towards } = piece.pattern;
  const loops = added?.contours ?? net;
  const numbers = stationNumbers(piece, loops, place, metrics);
  const stretchOut = stroke("stretch-out", onSheet(place, { x: 0, y: 0 }), onSheet(place, { x: girth, y: 0 }), { clause: "stations" });
  const bends = (added?.lines ?? []).map((line) => ({ ...line, segments: line.segments.map((segment) => segmentOnSheet(place, segment)) }));
  const edges = patternEdges(loops, place);
  const body: Item[] = [stretchOut, ...stationLines(piece, place, metrics), ...bends, ...edges, ...numbers];
  const notes = [towards > 0 ? words.outsideUp : words.insideUp, ...(added?.sums ?? []), ...more];
  return [
    ...body, ...seamWords(piece, boundsOf(edges), place, metrics, words),
    ...stretchOutLength(piece, body, place, metrics, `${words.stretchOut} ${figures.length(girth)}`, notes),
  ];
}

/** The stretch-out's dimension below (upright) or left (lying) of everything else; beyond it the face and the sums, one under the other. */
function stretchOutLength(piece: Piece, body: readonly Item[], place: Place, metrics: Metrics, text: string, [face, ...sums]: readonly string[]): Item[] {
  const { past, gap, lettering } = metrics;
  const box = boundsOf(body);
  const upright = place.turn === 0;
  const pitch = lettering + NOTE_GAP * gap;
  const ends = [piece.stations[0], piece.stations.at(-1)].map((station) => onSheet(place, { x: station?.girth ?? 0, y: station?.bottom ?? 0 }));
  const across = upright ? box.bottom - AIR * lettering - lettering - gap : box.left - AIR * lettering - (1 + sums.length) * pitch;
  const marks = ends.map((end) => (upright ? end.x : end.y)).sort((a, b) => a - b);
  const low = marks[0] ?? 0, high = marks[1] ?? 0;
  const middle = (low + high) / 2;
  const line = dimensionLine({
    axis: upright ? "horizontal" : "vertical", low, high, across, figureAt: middle, text, ref: { clause: "stations", field: null },
  }, metrics);
  const extensions = ends.map((end) => stroke("dimension", end, upright ? { x: end.x, y: across - past } : { x: across - past, y: end.y }));
  const notes = [face ?? "", ...sums].map((note, i): TextItem => ({
    kind: "text", pen: "lettering", text: note, height: lettering, align: "middle", turn: upright ? 0 : Math.PI / 2,
    at: upright ? { x: middle, y: across - (i + 1) * pitch } : { x: across + (i + 1) * pitch, y: middle },
  }));
  return [...extensions, ...line, ...notes];
}

/** The word beside both seam edges, outside the box of all edges, in the middle of their longest kept stretch, where it has room between the numbers. */
function seamWords(piece: Piece, edges: Box, place: Place, metrics: Metrics, words: DrawingWords): TextItem[] {
  const { gap, lettering } = metrics;
  const upright = place.turn === 0;
  return [piece.stations[0], piece.stations.at(-1)].flatMap((station, i) => {
    const kept = (i === 0 ? station?.after : station?.before) ?? [];
    const [stretch] = [...kept].sort((a, b) => b.to - b.from - (a.to - a.from));
    const needed = textWidth(words.seam, lettering) + 2 * (lettering + gap);
    if (!station || !stretch || (stretch.to - stretch.from) * place.scale < needed) return [];
    const { x, y } = onSheet(place, { x: station.girth, y: (stretch.from + stretch.to) / 2 });
    const at = upright ? { x: i === 0 ? edges.left - gap : edges.right + gap + lettering, y } : { x, y: i === 0 ? edges.top + gap : edges.bottom - gap - lettering };
    return [{ kind: "text", pen: "lettering", text: words.seam, height: lettering, align: "middle", turn: upright ? Math.PI / 2 : 0, at, ref: { clause: "seam" } }];
  });
}
