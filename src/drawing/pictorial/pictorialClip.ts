// The part of chains of points that lies over a stretch of the girth.

import type { Vec2 } from "../../core/index";

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * A closed chain cut down to the stretch (Sutherland and Hodgman, Reentrant Polygon Clipping, 1974): parts that fall asunder stay joined
 * by lines along the stretch's ends, which enclose nothing. Empty when nothing is left.
 */
export function clippedLoop(points: readonly Vec2[], { from, to }: Stretch): Vec2[] {
  return clippedSide(clippedSide(points, (x) => x - from), (x) => to - x);
}

/** `depth`: how far inside a place of the girth is. */
function clippedSide(points: readonly Vec2[], depth: (x: number) => number): Vec2[] {
  return points.flatMap((point, i) => {
    const last = points.at(i - 1) ?? point;
    const before = depth(last.x), now = depth(point.x);
    const kept = now >= 0 ? [point] : [];
    return before < 0 !== now < 0 ? [crossing(last, point, before, now), ...kept] : kept;
  });
}

/** The parts of an open chain over the stretch, in order. */
export function clippedChain(points: readonly Vec2[], { from, to }: Stretch): Vec2[][] {
  return sideRuns(points, (x) => x - from).flatMap((run) => sideRuns(run, (x) => to - x));
}

function sideRuns(points: readonly Vec2[], depth: (x: number) => number): Vec2[][] {
  const runs: Vec2[][] = [];
  points.forEach((point, i) => {
    const last = points[i - 1];
    const now = depth(point.x);
    const before = last ? depth(last.x) : -Infinity;
    if (now >= 0 && !(last && before >= 0)) runs.push(last ? [crossing(last, point, before, now)] : []);
    if (now >= 0) runs.at(-1)?.push(point);
    else if (last && before >= 0) runs.at(-1)?.push(crossing(last, point, before, now));
  });
  return runs.filter((run) => run.length > 1);
}

/** The point of a-b where the depth, `da` at a and `db` at b, is 0. */
function crossing(a: Vec2, b: Vec2, da: number, db: number): Vec2 {
  const u = da / (da - db);
  return { x: a.x + u * (b.x - a.x), y: a.y + u * (b.y - a.y) };
}
