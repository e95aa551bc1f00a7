// The two lines at one distance on either side of a closed outline: those places of the plane that lie just so far from it and no
// nearer. Found from close places of the outline, each moved sideways, and kept where no other part of the outline is nearer.

import { flattenSegments } from "./flatten";
import { offChord } from "./offChord";
import { beside } from "./offsetSegment";
import { pathLength } from "./path";
import type { Segment } from "./segment";
import { segmentTangent } from "./segmentTangent";
import type { Vec2 } from "./vector";

/** Places on an outline: so many to the distance, and no more in all. */
const TO_DISTANCE = 4, MOST = 4000;
/** Radians between places on the rounding of a corner. */
const ROUND = Math.PI / 36;
/** Share of the distance by which a place may lie nearer through rounding alone, and how far the outline is flattened. */
const NEARER = 2e-3, FLAT = 1e-3;

/** Closed chains of corners: outside and inside of the band of ±`width` mm (> 0) about a closed outline; none where the outline leaves no room. */
export function parallelBand(outline: readonly Segment[], width: number): Vec2[][] {
  const flat = flattenSegments(outline, FLAT * width);
  return [width, -width].flatMap((distance) => {
    const moved = movedPlaces(outline, distance);
    const kept = moved.map((point) => isClear(point, flat, (1 - NEARER) * width));
    return closedAt(moved, kept);
  });
}

/** Places along the outline moved sideways (right when positive), corners that open to that side rounded. */
function movedPlaces(outline: readonly Segment[], distance: number): Vec2[] {
  const step = Math.max(Math.abs(distance) / TO_DISTANCE, pathLength(outline) / MOST);
  return outline.flatMap((segment, i) => {
    const count = Math.max(2, Math.ceil(pathLength([segment]) / step));
    const along = Array.from({ length: count + 1 }, (_, k) => beside(segment, k / count, distance));
    const next = outline[(i + 1) % outline.length] ?? segment;
    return [...along, ...rounded(segment, next, distance)];
  });
}

function rounded(before: Segment, after: Segment, distance: number): Vec2[] {
  const [a, b] = [segmentTangent(before, 1), segmentTangent(after, 0)];
  const turn = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
  if (turn * distance <= 0) return [];
  const count = Math.ceil(Math.abs(turn) / ROUND);
  const from = Math.atan2(-a.x, a.y);
  return Array.from({ length: count }, (_, k) => {
    const angle = from + (turn * (k + 1)) / (count + 1);
    return { x: before.to.x + distance * Math.cos(angle), y: before.to.y + distance * Math.sin(angle) };
  });
}

function isClear(point: Vec2, flat: readonly Vec2[], least: number): boolean {
  return flat.every((to, i) => {
    const from = flat[i - 1];
    if (!from) return true;
    const isFar = Math.min(from.x, to.x) - point.x > least || point.x - Math.max(from.x, to.x) > least || Math.min(from.y, to.y) - point.y > least || point.y - Math.max(from.y, to.y) > least;
    return isFar || offChord(point, from, to) >= least;
  });
}

/** The kept places as one closed chain; where some are left out, its sides are drawn on to where they meet. */
function closedAt(points: readonly Vec2[], kept: readonly boolean[]): Vec2[][] {
  const start = points.findIndex((_, i) => kept[i] === true && kept.at(i - 1) !== true);
  const at = (i: number) => points[(Math.max(0, start) + i) % points.length];
  const chain: Vec2[] = [];
  const from = Math.max(0, start);
  for (let i = 0; i < points.length; i++) {
    const point = at(i);
    if (!point || kept[(from + i) % points.length] !== true) continue;
    const isGap = i > 0 && kept[(from + i - 1) % points.length] !== true;
    if (isGap) chain.push(...meeting(chain.at(-2), chain.at(-1), point, at(i + 1)));
    chain.push(point);
  }
  if (start >= 0 && chain.length > 2) chain.push(...meeting(chain.at(-2), chain.at(-1), chain[0], chain[1]));
  return chain.length > 2 ? [chain] : [];
}

/** Where the line that comes from `a` through `b` meets the one that goes from `c` to `d`, if that lies between them. */
function meeting(a: Vec2 | undefined, b: Vec2 | undefined, c: Vec2 | undefined, d: Vec2 | undefined): Vec2[] {
  if (!a || !b || !c || !d) return [];
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-9 * (Math.hypot(ux, uy) * Math.hypot(vx, vy))) return [];
  const s = ((c.x - b.x) * vy - (c.y - b.y) * vx) / cross, t = ((c.x - b.x) * uy - (c.y - b.y) * ux) / cross;
  return s >= 0 && t <= 0 ? [{ x: b.x + s * ux, y: b.y + s * uy }] : [];
}
