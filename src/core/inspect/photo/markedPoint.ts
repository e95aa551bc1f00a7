// What was marked in a picture, and what may be wrong with it.

import { type Vec2, distance } from "../../geometry/vector";
import type { Problem } from "../../job/problem";

/** A known point: its place in the picture (pixels from the upper left, y down) and on the paper (mm, y up). */
export interface MarkedPoint {
  readonly picture: Vec2;
  readonly paper: Vec2;
}

export const POINTS = { min: 4, max: 40 } as const;

/** Points nearer than this are one: pixels, mm. */
const SAME_PICTURE = 2;
const SAME_PAPER = 0.1;
/** Points this near a line, as a part of the greatest distance among them, are on it. */
const ON_LINE = 0.01;

/**
 * Why the points cannot fix a picture: too few or too many, two in one place (their numbers in `detail`, from 1), all but at most
 * one in line; null when nothing of that is wrong.
 */
export function pointsProblem(points: readonly MarkedPoint[]): Problem | null {
  if (points.length < POINTS.min) return { code: "points-too-few", field: "points", value: points.length, min: POINTS.min };
  if (points.length > POINTS.max) return { code: "too-many", field: "points", value: points.length, max: POINTS.max };
  const [picture, paper] = [points.map((point) => point.picture), points.map((point) => point.paper)];
  const same = samePair(picture, SAME_PICTURE) ?? samePair(paper, SAME_PAPER);
  if (same) return { code: "points-coincide", field: "points", detail: { first: same[0] + 1, second: same[1] + 1 } };
  if (areInLine(picture) || areInLine(paper)) return { code: "points-in-line", field: "points" };
  return null;
}

function samePair(points: readonly Vec2[], within: number): readonly [number, number] | null {
  for (const [i, a] of points.entries()) {
    const k = points.findIndex((b, k) => k > i && distance(a, b) < within);
    if (k >= 0) return [i, k];
  }
  return null;
}

/** Whether a line holds all of them but one at most. */
function areInLine(points: readonly Vec2[]): boolean {
  const near = ON_LINE * Math.max(...points.flatMap((a) => points.map((b) => distance(a, b))));
  return points.some((a, i) => points.slice(i + 1).some((b) => {
    const off = points.filter((c) => Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) > near * distance(a, b));
    return off.length <= 1;
  }));
}
