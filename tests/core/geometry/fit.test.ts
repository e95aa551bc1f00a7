import { describe, expect, it } from "vitest";
import { type SmoothCurve, fitCubics } from "../../../src/core/geometry/fit";
import { type Cubic, segmentPoint } from "../../../src/core/geometry/segment";
import type { Vec2 } from "../../../src/core/geometry/vector";
import { expectClose } from "../../support/approximate";

/** The graph of a function over [from, to]. */
function graph(f: (x: number) => number, slope: (x: number) => number, from: number, to: number): SmoothCurve {
  const at = (u: number): number => from + u * (to - from);
  return {
    point: (u) => ({ x: at(u), y: f(at(u)) }),
    tangent: (u) => {
      const length = Math.hypot(1, slope(at(u)));
      return { x: 1 / length, y: slope(at(u)) / length };
    },
  };
}

/** An edge of a round opening of radius `small` on a pipe of radius `large`, unrolled: from its lowest to its highest place. */
function openingEdge(small: number, large: number): SmoothCurve {
  const point = (u: number): Vec2 => ({ x: large * Math.asin((small / large) * Math.sin(Math.PI * u)), y: -small * Math.cos(Math.PI * u) });
  return {
    point,
    tangent: (u) => {
      const dx = (Math.PI * small * Math.cos(Math.PI * u)) / Math.sqrt(1 - ((small / large) * Math.sin(Math.PI * u)) ** 2);
      const dy = Math.PI * small * Math.sin(Math.PI * u);
      const length = Math.hypot(dx, dy);
      return { x: dx / length, y: dy / length };
    },
  };
}

const circle: SmoothCurve = {
  point: (u) => ({ x: 50 * Math.cos(2 * Math.PI * u), y: 50 * Math.sin(2 * Math.PI * u) }),
  tangent: (u) => ({ x: -Math.sin(2 * Math.PI * u), y: Math.cos(2 * Math.PI * u) }),
};

const curves: readonly (readonly [string, SmoothCurve])[] = [
  ["a mitre's wave at 45°", graph((x) => 50 * Math.cos(x / 50), (x) => -Math.sin(x / 50), 0, 100 * Math.PI)],
  ["a mitre's wave at 85°", graph((x) => 570 * Math.cos(x / 50), (x) => -11.4 * Math.sin(x / 50), 0, 100 * Math.PI)],
  ["half a wave between its crests", graph((x) => 50 * Math.cos(x / 50), (x) => -Math.sin(x / 50), 0, 50 * Math.PI)],
  ["a wave from inflection to inflection", graph((x) => 50 * Math.sin(x / 50), (x) => Math.cos(x / 50), 0, 50 * Math.PI)],
  ["a cubic about its inflection", graph((x) => x ** 3 / 400, (x) => (3 * x * x) / 400, -30, 30)],
  ["a flat place of fourth order", graph((x) => x ** 4 / 8000, (x) => x ** 3 / 2000, -30, 30)],
  ["a straight line", graph((x) => 2 * x + 1, () => 2, 0, 100)],
  ["a whole circle", circle],
  ["the edge of a small opening", openingEdge(10, 50)],
  ["the edge of an opening nearly as wide as the pipe", openingEdge(49.9, 50)],
];

/** Greatest distance of 60 points on each cubic from the curve, by the nearest of 6000 places and golden section from there. */
function deviation(curve: SmoothCurve, cubics: readonly Cubic[]): number {
  const places = Array.from({ length: 6001 }, (_, i) => curve.point(i / 6000));
  let most = 0;
  for (const cubic of cubics) for (let k = 0; k <= 60; k++) most = Math.max(most, distanceTo(curve, places, segmentPoint(cubic, k / 60)));
  return most;
}

function distanceTo(curve: SmoothCurve, places: readonly Vec2[], point: Vec2): number {
  let best = 0;
  let least = Infinity;
  places.forEach(({ x, y }, i) => {
    const square = (x - point.x) ** 2 + (y - point.y) ** 2;
    if (square < least) [best, least] = [i, square];
  });
  const away = (u: number): number => {
    const { x, y } = curve.point(Math.max(0, Math.min(1, u)));
    return Math.hypot(x - point.x, y - point.y);
  };
  let [low, high] = [(best - 1) / 6000, (best + 1) / 6000];
  const ratio = (Math.sqrt(5) - 1) / 2;
  for (let round = 0; round < 40; round++) {
    const [a, b] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (away(a) < away(b)) high = b;
    else low = a;
  }
  return away((low + high) / 2);
}

describe("fitCubics", () => {
  for (const [name, curve] of curves) {
    it(`along ${name} stays within the tolerance`, () => {
      for (const tolerance of [0.1, 0.001]) expect(deviation(curve, fitCubics(curve, tolerance))).toBeLessThanOrEqual(tolerance);
    });
    it(`along ${name} begins and ends exactly on its ends`, () => {
      const cubics = fitCubics(curve, 0.005);
      expect([cubics[0]!.from, cubics.at(-1)!.to]).toEqual([curve.point(0), curve.point(1)]);
    });
  }
  it("starts each cubic exactly where the one before ends", () => {
    const cubics = fitCubics(circle, 0.001);
    for (let i = 1; i < cubics.length; i++) expect(cubics[i]!.from).toBe(cubics[i - 1]!.to);
  });
  it("goes on in one direction from cubic to cubic", () => {
    const cubics = fitCubics(circle, 0.001);
    for (let i = 1; i < cubics.length; i++) {
      const [before, after] = [cubics[i - 1]!, cubics[i]!];
      const arriving = Math.atan2(before.to.y - before.c2.y, before.to.x - before.c2.x);
      const leaving = Math.atan2(after.c1.y - after.from.y, after.c1.x - after.from.x);
      expectClose(Math.sin(arriving - leaving), 0, 1e-12);
    }
  });
  it("takes one cubic for a straight line", () => expect(fitCubics(curves[6]![1], 0.001)).toHaveLength(1));
  it("takes one cubic for a cubic graph", () => expect(fitCubics(graph((x) => x ** 3 / 400, (x) => (3 * x * x) / 400, 0, 30), 0.001)).toHaveLength(1));
  it("takes at most 8 cubics for a circle of radius 50 within 0.005 mm", () => expect(fitCubics(circle, 0.005).length).toBeLessThanOrEqual(8));
  it("refuses a tolerance that is not above zero", () => {
    for (const tolerance of [0, -1, NaN]) expect(() => fitCubics(circle, tolerance)).toThrow(RangeError);
  });
});
