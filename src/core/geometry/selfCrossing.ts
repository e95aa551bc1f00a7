// Does a chain of lines and arcs meet itself? Closed-form meetings of every pair of segments; neighbours share one end.

import { type ChainSegment, onArc } from "./chain";
import { offChord } from "./offChord";
import type { Arc, Line } from "./segment";
import { type Vec2, distance } from "./vector";

/**
 * The numbers of the first two segments of an open chain that meet elsewhere than at the end they share, or null.
 * Running along each other counts as meeting. `noise` in mm.
 */
export function selfCrossing(chain: readonly ChainSegment[], noise: number): readonly [number, number] | null {
  for (let j = 1; j < chain.length; j++) {
    for (let i = 0; i < j; i++) {
      const a = chain[i];
      const b = chain[j];
      if (!a || !b) continue;
      const shared = i === j - 1 ? a.to : null;
      const strange = meetingPoints(a, b, noise).some((point) => !shared || distance(point, shared) > 10 * noise);
      if (strange) return [i, j];
    }
  }
  return null;
}

/** Points common to two segments; where they run along each other, the ends of the common stretch. */
function meetingPoints(a: ChainSegment, b: ChainSegment, noise: number): Vec2[] {
  const ends = [
    ...[a.from, a.to].filter((end) => lies(b, end, noise)),
    ...[b.from, b.to].filter((end) => lies(a, end, noise)),
  ];
  return [...ends, ...crossings(a, b).filter((point) => lies(a, point, noise) && lies(b, point, noise))];
}

function lies(segment: ChainSegment, point: Vec2, noise: number): boolean {
  if (segment.kind === "line") return offChord(point, segment.from, segment.to) <= noise;
  const off = Math.abs(distance(point, segment.centre) - distance(segment.from, segment.centre));
  return off <= noise && onArc(segment, point, noise);
}

/** Meetings of the whole lines and circles; none for parallel lines or circles about one centre. */
function crossings(a: ChainSegment, b: ChainSegment): Vec2[] {
  if (a.kind === "line") return b.kind === "line" ? lineLine(a, b) : lineCircle(a, b);
  return b.kind === "line" ? lineCircle(b, a) : circleCircle(a, b);
}

function lineLine(a: Line, b: Line): Vec2[] {
  const [ax, ay, bx, by] = [a.to.x - a.from.x, a.to.y - a.from.y, b.to.x - b.from.x, b.to.y - b.from.y];
  const determinant = ax * by - ay * bx;
  if (Math.abs(determinant) < 1e-12 * Math.hypot(ax, ay) * Math.hypot(bx, by)) return [];
  const u = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / determinant;
  return [{ x: a.from.x + u * ax, y: a.from.y + u * ay }];
}

function lineCircle(line: Line, { centre, from }: Arc): Vec2[] {
  const radius = distance(centre, from);
  const length = distance(line.from, line.to);
  const along = { x: (line.to.x - line.from.x) / length, y: (line.to.y - line.from.y) / length };
  const foot = (centre.x - line.from.x) * along.x + (centre.y - line.from.y) * along.y;
  const near = { x: line.from.x + foot * along.x, y: line.from.y + foot * along.y };
  const off = distance(centre, near);
  if (off > radius * (1 + 1e-12)) return [];
  const reach = Math.sqrt(Math.max(0, radius * radius - off * off));
  return [reach, -reach].map((d) => ({ x: near.x + d * along.x, y: near.y + d * along.y }));
}

function circleCircle(a: Arc, b: Arc): Vec2[] {
  const gap = distance(a.centre, b.centre);
  const [ra, rb] = [distance(a.centre, a.from), distance(b.centre, b.from)];
  if (gap < 1e-12 * (ra + rb)) return [];
  const foot = (gap * gap + ra * ra - rb * rb) / (2 * gap);
  const square = ra * ra - foot * foot;
  if (square < -1e-12 * ra * ra) return [];
  const reach = Math.sqrt(Math.max(0, square));
  const along = { x: (b.centre.x - a.centre.x) / gap, y: (b.centre.y - a.centre.y) / gap };
  return [reach, -reach].map((d) => ({
    x: a.centre.x + foot * along.x - d * along.y, y: a.centre.y + foot * along.y + d * along.x,
  }));
}
