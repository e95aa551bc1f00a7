import type { Loop, Segment, Vec2 } from "../../src/core/index";

/** Independent sampling and measuring of pattern loops: plain parameter steps, no tolerance. */

/** The segment's point at u in [0, 1]. */
export function segmentPoint(segment: Segment, u: number): Vec2 {
  if (segment.kind === "line") return blend(segment.from, segment.to, u);
  if (segment.kind === "cubic") {
    const { from, c1, c2, to } = segment;
    const [a, b, c, d] = [(1 - u) ** 3, 3 * u * (1 - u) ** 2, 3 * u * u * (1 - u), u ** 3];
    return { x: a * from.x + b * c1.x + c * c2.x + d * to.x, y: a * from.y + b * c1.y + c * c2.y + d * to.y };
  }
  const { centre, from, to } = segment;
  const begin = Math.atan2(from.y - centre.y, from.x - centre.x);
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const angle = begin + u * arcSweep(begin, Math.atan2(to.y - centre.y, to.x - centre.x), segment.anticlockwise);
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}

/** Unit vector to the left of travel at u, by a small central step. */
export function segmentNormal(segment: Segment, u: number): Vec2 {
  const step = 1e-4;
  const [a, b] = [segmentPoint(segment, Math.max(0, u - step)), segmentPoint(segment, Math.min(1, u + step))];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return length === 0 ? { x: 0, y: 0 } : { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
}

/** Closed run of points: `perCurve` steps on each arc and cubic, one on each line; the first point is not repeated. */
export function samplePoints(loop: Loop, perCurve: number): Vec2[] {
  return loop.segments.flatMap((segment) => {
    const steps = segment.kind === "line" ? 1 : perCurve;
    return Array.from({ length: steps }, (_, index) => (index === 0 ? segment.from : segmentPoint(segment, index / steps)));
  });
}

/** Closed run of points with so many steps on each curve that no chord leaves it by more than `sagitta` mm (judged at the chords' middles, from 8 steps up). */
export function finePoints(loop: Loop, sagitta: number): Vec2[] {
  return loop.segments.flatMap((segment) => {
    if (segment.kind === "line") return [segment.from];
    let steps = 8;
    while (steps < 1024 && widestGap(segment, steps) > sagitta) steps *= 2;
    return Array.from({ length: steps }, (_, index) => (index === 0 ? segment.from : segmentPoint(segment, index / steps)));
  });
}

/** Shortest distance from a point to closed runs of points, in mm. */
export function distanceTo(runs: readonly (readonly Vec2[])[], { x, y }: Vec2): number {
  let least = Infinity;
  for (const run of runs) {
    for (let index = 0; index < run.length; index += 1) {
      const [a, b] = [run[index]!, run[index + 1 === run.length ? 0 : index + 1]!];
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const square = dx * dx + dy * dy;
      const along = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / square));
      const [offX, offY] = [x - a.x - along * dx, y - a.y - along * dy];
      least = Math.min(least, offX * offX + offY * offY);
    }
  }
  return Math.sqrt(least);
}

/** True where the point lies inside an odd number of the runs' turns. */
export function isInside(runs: readonly (readonly Vec2[])[], { x, y }: Vec2): boolean {
  let inside = false;
  for (const run of runs) {
    for (let index = 0; index < run.length; index += 1) {
      const [a, b] = [run[index]!, run[index + 1 === run.length ? 0 : index + 1]!];
      if (a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)) inside = !inside;
    }
  }
  return inside;
}

/** Area by the shoelace rule on 64 steps a curve, refined once (Richardson): positive where the loop runs anticlockwise. mm² */
export function loopArea(loop: Loop): number {
  const [coarse, fine] = [shoelace(samplePoints(loop, 64)), shoelace(samplePoints(loop, 128))];
  return fine + (fine - coarse) / 3;
}

export function shoelace(points: readonly Vec2[]): number {
  const origin = points[0] ?? { x: 0, y: 0 };
  let twice = 0;
  for (let index = 0; index < points.length; index += 1) {
    const [a, b] = [points[index]!, points[(index + 1) % points.length]!];
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  }
  return twice / 2;
}

/** Length by chords on 64 steps a curve, refined once (Richardson). mm */
export function segmentLength(segment: Segment): number {
  if (segment.kind === "line") return Math.hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
  const chords = (steps: number): number => {
    let sum = 0;
    let last = segment.from;
    for (let index = 1; index <= steps; index += 1) {
      const next = segmentPoint(segment, index / steps);
      sum += Math.hypot(next.x - last.x, next.y - last.y);
      last = next;
    }
    return sum;
  };
  const [coarse, fine] = [chords(64), chords(128)];
  return fine + (fine - coarse) / 3;
}

function widestGap(segment: Segment, steps: number): number {
  let widest = 0;
  let a = segmentPoint(segment, 0);
  for (let index = 1; index <= steps; index += 1) {
    const [middle, b] = [segmentPoint(segment, (index - 0.5) / steps), segmentPoint(segment, index / steps)];
    const [offX, offY] = [middle.x - (a.x + b.x) / 2, middle.y - (a.y + b.y) / 2];
    widest = Math.max(widest, offX * offX + offY * offY);
    a = b;
  }
  return Math.sqrt(widest);
}

function arcSweep(begin: number, end: number, anticlockwise: boolean): number {
  const sweep = end - begin;
  if (anticlockwise) return sweep <= 0 ? sweep + 2 * Math.PI : sweep;
  return sweep >= 0 ? sweep - 2 * Math.PI : sweep;
}

function blend(a: Vec2, b: Vec2, u: number): Vec2 {
  return { x: a.x + (b.x - a.x) * u, y: a.y + (b.y - a.y) * u };
}
