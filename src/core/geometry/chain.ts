// Chains of lines and arcs: straight runs, the arc between two points, the mirror image, what lies on an arc.

import { wrapTurn } from "../numeric/angle";
import { type Arc, type Line, arcSweep } from "./segment";
import { type Vec2, distance } from "./vector";

export type ChainSegment = Line | Arc;

/** Straight lines through the points in order; a point given twice in a row counts once. */
export function linesThrough(points: readonly Vec2[]): Line[] {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i];
    return from && distance(from, to) > 0 ? [{ kind: "line" as const, from, to }] : [];
  });
}

/**
 * The arc of `radius` (mm) between two points that turns left (anticlockwise) or right; `long` takes more than half a turn.
 * @throws RangeError when the radius is less than half the distance (a shortfall of 1e-9 of it is forgiven), or the points are one.
 */
export function arcByRadius(from: Vec2, to: Vec2, radius: number, turn: "left" | "right", long: boolean): Arc {
  const half = distance(from, to) / 2;
  if (half === 0) throw new RangeError(`no arc: both ends are (${from.x}, ${from.y})`);
  if (!(radius >= half * (1 - 1e-9))) throw new RangeError(`invalid radius: ${radius}; not in [${half}, ∞)`);
  const height = Math.sqrt(Math.max(0, radius * radius - half * half));
  const left = { x: -(to.y - from.y) / (2 * half), y: (to.x - from.x) / (2 * half) };
  const side = (turn === "left") === long ? -height : height;
  const centre = { x: (from.x + to.x) / 2 + side * left.x, y: (from.y + to.y) / 2 + side * left.y };
  return { kind: "arc", from, to, centre, anticlockwise: turn === "left" };
}

/** A chain mirrored in the line y = 0, in the same order. */
export function mirroredInBase(chain: readonly ChainSegment[]): ChainSegment[] {
  const flip = ({ x, y }: Vec2): Vec2 => ({ x, y: -y });
  return chain.map((segment) => {
    const ends = { from: flip(segment.from), to: flip(segment.to) };
    return segment.kind === "line" ? { ...segment, ...ends } : { ...segment, ...ends, centre: flip(segment.centre), anticlockwise: !segment.anticlockwise };
  });
}

/** Whether a point of the arc's circle lies on the arc: within `noise` (mm, along the circle) of it, ends included. */
export function onArc(arc: Arc, point: Vec2, noise: number): boolean {
  const { start, sweep, radius } = arcSweep(arc);
  if (distance(point, arc.from) <= noise || distance(point, arc.to) <= noise) return true;
  const angle = Math.atan2(point.y - arc.centre.y, point.x - arc.centre.x);
  const turn = wrapTurn(sweep > 0 ? angle - start : start - angle);
  return turn * radius <= Math.abs(sweep) * radius + noise;
}

