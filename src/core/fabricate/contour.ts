// The line that is cut: the net outline with every allowance added to its run of edge.

import { outlineCrossing } from "../geometry/outlineCrossing";
import type { Segment } from "../geometry/segment";
import type { Vec2 } from "../geometry/vector";
import type { Owner } from "../cut/owner";
import type { Cut } from "../job/job";
import type { FabricationCode } from "../job/problem";
import type { Loop } from "../unroll/pattern";
import type { Allowance } from "./allowance";
import { notchedStrip } from "./notchedStrip";
import { type AllowancePlace, type Run, runsOf } from "./place";

/** A segment of the cut line: a net edge, or part of what was added at a place. */
export type ContourSegment = Segment & { readonly owner: Owner; readonly allowance: AllowancePlace | null };

/** A closed cut line; outlines run anticlockwise, openings clockwise. */
export interface Contour {
  readonly kind: "outline" | "opening";
  readonly segments: readonly ContourSegment[];
}

/** A run of net edge that got an allowance, and the line along its outside. */
export interface Strip {
  readonly allowance: Allowance;
  readonly run: Run;
  readonly outer: readonly Segment[];
}

/** Why an allowance was left off, and where. */
export interface Refusal {
  readonly code: FabricationCode;
  readonly place: AllowancePlace;
  readonly at: Vec2;
}

export interface Contours {
  readonly contours: readonly Contour[];
  readonly strips: readonly Strip[];
  readonly refusals: readonly Refusal[];
}

/** Crossings smaller than this many mm are not seen. */
const CROSSING_TOLERANCE = 0.02;

/**
 * The cut lines of a pattern of `girth` mm with these allowances, parallels within `tolerance` mm. An allowance that
 * cannot be made is left off wherever it was asked for, and said in `refusals`.
 */
export function contoursOf(
  loops: readonly Loop[], allowances: readonly Allowance[], girth: number, cuts: readonly Cut[], tolerance: number,
): Contours {
  const made = loops.map((loop) => contourOf(loop, allowances, girth, cuts, tolerance));
  const contours = made.map(({ contour }) => contour);
  const refusals = made.flatMap((one) => one.refusals);
  if (refusals.length === 0) refusals.push(...crossingOf(contours));
  const [refusal] = refusals;
  if (!refusal) return { contours, strips: made.flatMap(({ strips }) => strips), refusals };
  const left = allowances.filter(({ place }) => refusals.every((one) => one.place !== place));
  const rest = contoursOf(loops, left, girth, cuts, tolerance);
  return { ...rest, refusals: [...firstOfEachPlace(refusals), ...rest.refusals] };
}

function firstOfEachPlace(refusals: readonly Refusal[]): Refusal[] {
  return refusals.filter(({ place }, i) => refusals.findIndex((other) => other.place === place) === i);
}

/** The allowances that cross themselves, each other or a net edge; crossings of net edges alone are the pattern's own. */
function crossingOf(contours: readonly Contour[]): Refusal[] {
  if (!contours.some(({ segments }) => segments.some(({ allowance }) => allowance))) return [];
  const found = outlineCrossing(contours.map(({ segments }) => segments), CROSSING_TOLERANCE);
  if (!found) return [];
  const [a, b] = found.segments.map(({ allowance }) => allowance);
  const code = a === b ? "allowance-crosses-itself" : "allowance-meets-outline";
  return [...new Set([a, b])].flatMap((place) => (place ? [{ code, place, at: found.at } as const] : []));
}

function contourOf(loop: Loop, allowances: readonly Allowance[], girth: number, cuts: readonly Cut[], tolerance: number) {
  const strips: Strip[] = [];
  const refusals: Refusal[] = [];
  const segments = runsOf(loop.segments, girth, cuts).flatMap((run): ContourSegment[] => {
    const net = run.segments.map((segment) => ({ ...segment, allowance: null }));
    const allowance = loop.kind === "outline" ? allowances.find(({ place }) => place === run.place) : undefined;
    if (!allowance) return net;
    const { place, width } = allowance;
    const strip = notchedStrip(run.segments, width, tolerance);
    if (!strip.ok) {
      refusals.push({ code: strip.code, place, at: strip.at });
      return net;
    }
    strips.push({ allowance, run, outer: strip.outer });
    const owner = run.segments[0]?.owner ?? { kind: "seam" };
    return [strip.notch, ...strip.outer, strip.lastNotch].map((segment) => ({ ...segment, owner, allowance: place }));
  });
  const contour: Contour = { kind: loop.kind, segments };
  return { contour, strips, refusals };
}
