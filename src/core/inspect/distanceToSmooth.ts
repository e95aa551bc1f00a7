// How far is a point of the pattern from the smooth curve through the stations?

import { type Vec2, lengthOf } from "../geometry/vector";
import { type Spline, splineValue } from "../numeric/spline";
import type { SmoothEnd } from "./smoothCurve";

/** Stretches no farther along than this share of the girth are looked at first. */
const NEARBY = 1 / 8;
/** Places in every piece of a spline of which the nearest is bettered, and halvings about it. */
const STARTS = 8;
const HALVINGS = 24;
const ROUNDS = 6;

/**
 * Distance (mm) from a point of the pattern to the smooth curve: Gauss-Newton from the point straight above or below, and where that is
 * not near enough, from all places that could be nearer; Infinity where there is no curve. When the point is surely no farther than
 * `enough` (mm) any distance up to that may be returned.
 */
export function distanceToSmooth(smooth: SmoothEnd, point: Vec2, enough: number): number {
  const reach = NEARBY * smooth.girth;
  const near = distanceWithin(reach, smooth, point, enough);
  return near <= reach ? near : Math.min(near, distanceWithin(Infinity, smooth, point, enough));
}

/** Of the stretches no more than `reach` (mm along the girth) from the point. */
function distanceWithin(reach: number, { girth, stretches }: SmoothEnd, point: Vec2, enough: number): number {
  let best = Infinity;
  for (const spline of stretches) {
    const [from, to] = [spline.at[0] ?? 0, spline.at.at(-1) ?? 0];
    for (const x of [point.x, point.x + girth, point.x - girth]) {
      if (x < from - reach || x > to + reach) continue;
      best = Math.min(best, descended(spline, { x, y: point.y }, enough));
      if (best > enough) best = Math.min(best, searched(spline, { x, y: point.y }, best));
      if (best <= enough) return best;
    }
  }
  return best;
}

/** Gauss-Newton from the point straight above or below; on a steep curve it may stop short of the nearest place. */
function descended(spline: Spline, point: Vec2, enough: number): number {
  const [from, to] = [spline.at[0] ?? 0, spline.at.at(-1) ?? 0];
  let x = Math.max(from, Math.min(to, point.x));
  let { value, slope } = splineValue(spline, x);
  let least = lengthOf(point.x - x, point.y - value);
  for (let round = 0; round < ROUNDS && least > enough; round++) {
    const step = (point.x - x + (point.y - value) * slope) / (1 + slope * slope);
    x = Math.max(from, Math.min(to, x + step));
    ({ value, slope } = splineValue(spline, x));
    least = Math.min(least, lengthOf(point.x - x, point.y - value));
    if (Math.abs(step) < 1e-6) break;
  }
  return least;
}

/** The least distance over the pieces of the spline that reach within `most` mm of the point's own place, `most` where none is nearer. */
function searched(spline: Spline, point: Vec2, most: number): number {
  let best = most;
  for (let i = 1; i < spline.at.length; i++) {
    const [from, to] = [spline.at[i - 1] ?? 0, spline.at[i] ?? 0];
    if (to < point.x - best || from > point.x + best) continue;
    let [start, least] = [from, Infinity];
    for (let k = 0; k <= STARTS; k++) {
      const x = from + ((to - from) * k) / STARTS;
      const away = lengthOf(point.x - x, point.y - splineValue(spline, x).value);
      if (away < least) [start, least] = [x, away];
    }
    const part = (to - from) / STARTS;
    best = Math.min(best, halved(spline, point, Math.max(from, start - part), Math.min(to, start + part)));
  }
  return best;
}

/** The distance at a place between two where it turns, found by halving. */
function halved(spline: Spline, point: Vec2, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let round = 0; round < HALVINGS; round++) {
    const x = (low + high) / 2;
    const { value, slope } = splineValue(spline, x);
    if (point.x - x + (point.y - value) * slope > 0) low = x;
    else high = x;
  }
  const x = (low + high) / 2;
  return lengthOf(point.x - x, point.y - splineValue(spline, x).value);
}
