import { describe, expect, test } from "vitest";
import { parallelBand } from "../../../src/core/geometry/parallelBand";
import type { Segment } from "../../../src/core/geometry/segment";
import type { Vec2 } from "../../../src/core/geometry/vector";

const chain = (...points: [number, number][]): Segment[] => points.map(([x, y], i) => {
  const [toX, toY] = points[(i + 1) % points.length]!;
  return { kind: "line", from: { x, y }, to: { x: toX, y: toY } };
});
/** Shoelace formula. */
const area = (points: readonly Vec2[]) => Math.abs(points.reduce((sum, { x, y }, i) => sum + x * points[(i + 1) % points.length]!.y - y * points[(i + 1) % points.length]!.x, 0)) / 2;

describe("parallelBand", () => {
  test("of a rectangle has the area of Steiner's formula outside, A + P d + π d², and that of a smaller rectangle inside", () => {
    const [outside, inside] = parallelBand(chain([0, 0], [120, 0], [120, 60], [0, 60]), 2);
    // The rounding is drawn in 5° chords: short of the circle by less than 0.2 %.
    expect(area(outside!)).toBeCloseTo(120 * 60 + 360 * 2 + Math.PI * 4, 1);
    expect(area(inside!)).toBeCloseTo(116 * 56, 6);
  });

  test("of a hollow corner meets itself at the corner of the moved sides", () => {
    const [outside] = parallelBand(chain([0, 0], [100, 0], [100, 100], [50, 100], [50, 40], [0, 40]), 3);
    expect(Math.min(...outside!.map(({ x, y }) => Math.hypot(x - 47, y - 43)))).toBeLessThan(1e-6);
  });

  test("of a circle is two circles, whichever way it runs", () => {
    const half = (from: Vec2, to: Vec2, anticlockwise: boolean): Segment => ({ kind: "arc", from, to, centre: { x: 0, y: 0 }, anticlockwise });
    for (const anticlockwise of [true, false]) {
      const band = parallelBand([half({ x: 20, y: 0 }, { x: -20, y: 0 }, anticlockwise), half({ x: -20, y: 0 }, { x: 20, y: 0 }, anticlockwise)], 1);
      const radii = band.map((points) => points.map(({ x, y }) => Math.hypot(x, y)));
      expect(radii.map((all) => Math.round(all[0]!)).sort()).toEqual([19, 21]);
      for (const all of radii) for (const radius of all) expect(Math.abs(radius - all[0]!)).toBeLessThan(1e-9);
    }
  });

  test("inside an outline without room for it is nothing", () => {
    expect(parallelBand(chain([0, 0], [100, 0], [100, 3], [0, 3]), 2)).toHaveLength(1);
  });

  test("lies at its distance from a wave, nowhere nearer by more than two thousandths of it", () => {
    const wave: Segment[] = [
      { kind: "cubic", from: { x: 100, y: 50 }, c1: { x: 66, y: 80 }, c2: { x: 33, y: 20 }, to: { x: 0, y: 50 } },
      ...chain([0, 50], [0, 0], [100, 0], [100, 50]).slice(0, 3),
    ];
    for (const points of parallelBand(wave, 1)) {
      const near = (u: number) => ({ x: 100 * (1 - u) ** 3 + 198 * u * (1 - u) ** 2 + 99 * u * u * (1 - u), y: 50 * (1 - u) ** 3 + 240 * u * (1 - u) ** 2 + 60 * u * u * (1 - u) + 50 * u ** 3 });
      // Close enough that the nearest sample is no farther off than the curve by a thousandth.
      const samples = Array.from({ length: 2001 }, (_, k) => near(k / 2000));
      const from = points.map(({ x, y }) => Math.min(...samples.map((one) => Math.hypot(one.x - x, one.y - y))));
      expect(Math.min(...from)).toBeGreaterThan(0.9975);
      expect(from.filter((one) => Math.abs(one - 1) < 2e-3).length).toBeGreaterThan(400);
    }
  });
});
