import { arcByRadius } from "../../../src/core/geometry/chain";
import type { ChainSegment } from "../../../src/core/geometry/chain";
import type { Cutter, PlaneCutter, SweepCutter } from "../../../src/core/cut/cutter";
import { outlineCutter } from "../../../src/core/cut/outlineCutter";
import { openingOutline } from "../../../src/core/part/openingCutter";
import type { RandomSource } from "../../support/randomSource";

/** Cutters for tests met on a surface of radius 50; lengths in mm, angles in radians. */

export const RADIUS = 50;

const owner = { kind: "cut", index: 0, id: "cut" } as const;

export function plane(height: number, slope = 0, direction = 0): PlaneCutter {
  return { kind: "plane", owner, radius: RADIUS, height, slope, direction, removes: "above" };
}

/** A round opening of `radius` about (offset, height), through both walls unless a depth is given. */
export function round(radius: number, height: number, direction = 0, offset = 0, depth: readonly [number, number] = [-Infinity, Infinity]): SweepCutter {
  return outlineCutter(openingOutline({ shape: "round", diameter: 2 * radius }, { x: offset, y: height }), direction, depth, RADIUS, owner);
}

export function rectangle(width: number, length: number, height: number, direction = 0, turn = 0): SweepCutter {
  return outlineCutter(openingOutline({ shape: "rectangle", width, length, turn }, { x: 0, y: height }), direction, [-Infinity, Infinity], RADIUS, owner);
}

/** A closed outline of six lines and arcs round the point (offset, height), each corner at its own distance. */
export function star(source: RandomSource, offset: number, height: number): ChainSegment[] {
  const corners = Array.from({ length: 6 }, (_, k) => {
    const [angle, reach] = [(k * Math.PI) / 3 + source.between(0, 0.5), source.between(10, 40)];
    return { x: offset + reach * Math.cos(angle), y: height + reach * Math.sin(angle) };
  });
  return corners.map((from, k): ChainSegment => {
    const to = corners[(k + 1) % 6]!;
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    return source.chance(0.5) ? { kind: "line", from, to } : arcByRadius(from, to, chord * source.between(2, 4), source.pick(["left", "right"]), false);
  });
}

export function sweep(outline: readonly ChainSegment[], direction = 0): SweepCutter {
  return outlineCutter(outline, direction, [-Infinity, Infinity], RADIUS, owner);
}

export function randomCutter(source: RandomSource): Cutter {
  const [height, direction] = [source.between(60, 140), source.between(0, 7)];
  switch (source.whole(0, 3)) {
    case 0: return plane(height, source.between(0, 2), direction);
    case 1: return round(source.between(5, 49), height, direction, source.between(-20, 20));
    case 2: return rectangle(source.between(10, 90), source.between(10, 90), height, direction, source.between(0, 180));
    default: return sweep(star(source, source.between(-20, 20), height), direction);
  }
}
