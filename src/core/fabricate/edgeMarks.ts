// Marks that go with an allowance: bend lines with their prick points, the net line of the seam, slits of a flange.

import { offChord } from "../geometry/offChord";
import { flattenSegments } from "../geometry/flatten";
import { beside } from "../geometry/offsetSegment";
import { pathLength } from "../geometry/path";
import { type Segment, segmentLength, segmentPoint } from "../geometry/segment";
import { type Vec2, distance } from "../geometry/vector";
import type { FabricationChoices } from "../job/fabricationChoices";
import type { Allowance } from "./allowance";
import type { Strip } from "./contour";
import { type Mark, foldMarks, lineBetween } from "./mark";
import { notchedStrip } from "./notchedStrip";

/** Slits whose outer end is nearer to another place of the edge by more than this (mm) would leave the flange. */
const SLIT_SLACK = 0.05;

/** The marks of one strip, parallels within `tolerance` mm. */
export function stripMarks({ allowance, run, outer }: Strip, edges: FabricationChoices["edges"], tolerance: number): Mark[] {
  const { place, kind, width } = allowance;
  if (kind === "lap" || (kind === "grooved" && !foldsOnNet(allowance))) return [{ kind: "seam", place, path: run.segments }];
  if (kind === "grooved") return [];
  const folds: (readonly Segment[])[] = [run.segments];
  if (kind === "double-hem") {
    const second = notchedStrip(run.segments, width / 2, tolerance);
    if (second.ok) folds.push(second.outer);
  }
  const finish = place === "top" || place === "bottom" ? edges[place] : null;
  const slits = finish?.kind === "flange" && finish.slits > 0 ? slitMarks(run.segments, outer, width, finish.slits) : [];
  return [...folds.flatMap((path) => foldMarks(place, path)), ...slits];
}

/** Whether a grooved seam's own bend line lies on the net edge: one width is added here. */
function foldsOnNet({ parts }: Allowance): boolean {
  return parts.every(({ factor }) => Math.abs(factor - 1) < 1e-9);
}

/** Slits square to the edge at equal spaces of at most `pitch` mm, none in the notches. */
function slitMarks(run: readonly Segment[], outer: readonly Segment[], width: number, pitch: number): Mark[] {
  const length = pathLength(run);
  const count = Math.ceil(length / pitch - 1e-9);
  const [begin, end] = [run[0]?.from, run.at(-1)?.to];
  const edge = flattenSegments(run, SLIT_SLACK / 5);
  const rim = flattenSegments(outer, SLIT_SLACK / 5);
  return Array.from({ length: Math.max(0, count - 1) }, (_, i) => placeAlong(run, ((i + 1) * length) / count)).flatMap((place): Mark[] => {
    if (!place || !begin || !end) return [];
    const from = segmentPoint(place.segment, place.u);
    const to = beside(place.segment, place.u, width);
    const inNotch = Math.min(distance(from, begin), distance(from, end)) <= width;
    const inside = distanceTo(edge, to) >= width - SLIT_SLACK && distanceTo(rim, to) <= SLIT_SLACK;
    return inside && !inNotch ? [{ kind: "slit", line: lineBetween(from, to) }] : [];
  });
}

function distanceTo(points: readonly Vec2[], point: Vec2): number {
  return points.slice(1).reduce((least, to, i) => Math.min(least, offChord(point, points[i] ?? to, to)), Infinity);
}

/** The place `along` mm from the start of a chain; within a cubic by halving its length. */
function placeAlong(run: readonly Segment[], along: number): { segment: Segment; u: number } | null {
  let left = along;
  for (const segment of run) {
    const length = segmentLength(segment);
    if (left <= length) return { segment, u: partAt(segment, left / length) };
    left -= length;
  }
  return null;
}

const CHORDS = 64;

/** u at a part of a segment's length, by the lengths of 64 chords (a slit's place needs no more). */
function partAt(segment: Segment, part: number): number {
  if (segment.kind !== "cubic") return part;
  const points = Array.from({ length: CHORDS + 1 }, (_, i) => segmentPoint(segment, i / CHORDS));
  const lengths = points.slice(1).map((to, i) => distance(points[i] ?? to, to));
  let left = part * lengths.reduce((sum, length) => sum + length, 0);
  for (const [i, length] of lengths.entries()) {
    if (left <= length) return (i + left / length) / CHORDS;
    left -= length;
  }
  return 1;
}
