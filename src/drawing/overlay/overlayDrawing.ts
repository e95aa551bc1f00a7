// The pattern to be laid over a drawing of it, on film or against the light: the true edge dashed, so that the drawn one shows through,
// between two lines as far off as is allowed; the elements with their numbers; the base line.

import { type Loop, type Piece, type Segment, type Vec2, parallelBand } from "../../core/index";
import type { Item } from "../display";
import { LETTERING } from "../lettering";
import { metricsFor } from "../metrics";
import { type Place, onSheet, segmentOnSheet } from "../place";
import { stationLines } from "../pattern/stationLines";
import { stationNumbers } from "../pattern/stationNumbers";
import { polygon, stroke } from "../strokes";

export interface OverlayWanted {
  /** Paper mm a real mm. */
  readonly scale: number;
  /** mm on the paper to either side. */
  readonly tolerance: number;
  /** Spaces stepped off with chords: the stretch-out is so much shorter. */
  readonly stepped: boolean;
}

/** How far the base line runs past both ends, mm on the paper. */
const PAST = 6;

/** Numbers are kept clear of every so manyth corner of a line of the band. */
const COARSE = 4;

/** Items in mm on the paper, station 0 on the base line at the origin. */
export function overlayDrawing(piece: Piece, wanted: OverlayWanted): Item[] {
  const across = wanted.stepped ? chordShare(piece) : 1;
  const place: Place = { origin: { x: 0, y: 0 }, scale: wanted.scale, turn: 0 };
  const metrics = metricsFor(LETTERING);
  const { loops, girth } = piece.pattern;
  const outlines = loops.map(({ segments }) => segments.map((segment) => narrowed(segmentOnSheet(place, segment), across)));
  const lines = outlines.flatMap((segments) => parallelBand(segments, wanted.tolerance));
  const marked = [...stationLines(piece, place, metrics), ...stationNumbers(piece, lines.map((points) => loopOf(points, wanted.scale)), place, metrics)];
  const end = onSheet(place, { x: girth * across, y: 0 });
  return [
    stroke("stretch-out", { x: -PAST, y: 0 }, { x: end.x + PAST, y: 0 }),
    ...marked.map((item) => narrowedItem(item, across)),
    ...outlines.map((segments): Item => ({ kind: "path", pen: "true edge", segments, closed: true })),
    ...lines.map((points) => polygon("tolerance line", points)),
  ];
}

/** A line of the band as numbers are kept clear of it, in pattern mm. */
function loopOf(points: readonly Vec2[], scale: number): Loop {
  const corners = points.filter((_, i) => i % COARSE === 0).map(({ x, y }) => ({ x: x / scale, y: y / scale }));
  return { kind: "outline", segments: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % corners.length] ?? from, owner: { kind: "seam" } })) };
}

/** The chord of one space for its arc. */
function chordShare({ stations }: Piece): number {
  const half = Math.PI / stations.filter(({ mark }) => mark === "even").length;
  return Math.sin(half) / half;
}

function narrowedItem(item: Item, across: number): Item {
  if (item.kind === "text") return { ...item, at: moved(item.at, across) };
  return item.kind === "path" ? { ...item, segments: item.segments.map((segment) => narrowed(segment, across)) } : item;
}

/** A line or cubic with its width changed; edges of a pattern are nothing else. */
function narrowed(segment: Segment, across: number): Segment {
  const [from, to] = [moved(segment.from, across), moved(segment.to, across)];
  if (segment.kind === "cubic") return { ...segment, from, to, c1: moved(segment.c1, across), c2: moved(segment.c2, across) };
  return { kind: "line", from, to };
}

function moved({ x, y }: Vec2, across: number): Vec2 {
  return { x: across * x, y };
}
