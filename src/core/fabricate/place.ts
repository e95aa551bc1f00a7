// Where on the pattern may something be added: the two edges of the seam, the top end, the bottom end.

import type { Owner } from "../cut/owner";
import { pathLength } from "../geometry/path";
import type { Cut, End } from "../job/job";
import type { PatternSegment } from "../unroll/pattern";

/** The seam's edges by their side of the pattern: the girth begins at "seam-start" and ends at "seam-end". */
export type AllowancePlace = "seam-start" | "seam-end" | End;

/** The place a net edge belongs to; null for the edge of an opening. */
export function placeOf({ owner, from }: PatternSegment, girth: number, cuts: readonly Cut[]): AllowancePlace | null {
  if (owner.kind === "seam") return from.x < girth / 2 ? "seam-start" : "seam-end";
  return endOf(owner, cuts);
}

/** The end an edge belongs to; null for the seam and openings. */
export function endOf(owner: Owner, cuts: readonly Cut[]): End | null {
  if (owner.kind === "cut") {
    const cut = cuts[owner.index];
    return cut && cut.kind !== "opening" ? cut.end : null;
  }
  return owner.kind === "seam" ? null : owner.kind;
}

/** Neighbouring segments of one place. */
export interface Run {
  readonly place: AllowancePlace | null;
  readonly segments: readonly PatternSegment[];
}

/** The runs of a closed loop, in order; the first begins at a change of place where there is one. */
export function runsOf(segments: readonly PatternSegment[], girth: number, cuts: readonly Cut[]): Run[] {
  const places = segments.map((segment) => placeOf(segment, girth, cuts));
  const begin = Math.max(0, places.findIndex((place, i) => place !== places.at(i - 1)));
  const runs: { place: AllowancePlace | null; segments: PatternSegment[] }[] = [];
  for (let k = 0; k < segments.length; k++) {
    const i = (begin + k) % segments.length;
    const [segment, place] = [segments[i], places[i] ?? null];
    const last = runs.at(-1);
    if (!segment) continue;
    if (last && last.place === place) last.segments.push(segment);
    else runs.push({ place, segments: [segment] });
  }
  return runs;
}

/** A loop without segments shorter than `least` mm: each is closed by moving the start of the next. */
export function withoutSpecks(segments: readonly PatternSegment[], least: number): PatternSegment[] {
  const kept = segments.filter((segment) => pathLength([segment]) >= least);
  return kept.map((segment, i) => ({ ...segment, from: (kept.at(i - 1) ?? segment).to }));
}
