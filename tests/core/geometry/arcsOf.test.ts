import { describe, expect, it } from "vitest";
import { arcsOf } from "../../../src/core/geometry/arcsOf";
import type { Cubic } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";
import { chainDistance } from "../../support/chainDistance";
import { segmentPoint } from "../../support/loopSampling";
import { randomSource } from "../../support/randomSource";

const cubic = (...[x0, y0, x1, y1, x2, y2, x3, y3]: number[]): Cubic => ({ kind: "cubic", from: { x: x0!, y: y0! }, c1: { x: x1!, y: y1! }, c2: { x: x2!, y: y2! }, to: { x: x3!, y: y3! } });

/** The quarter circle's usual cubic: handles of 4/3 tan(π/8) of the radius. */
const HANDLE = (4 / 3) * Math.tan(Math.PI / 8);

/** The greatest distance of finely taken places of the one from the other, both ways. */
function apart(segment: Cubic, tolerance: number): number {
  const steps = Array.from({ length: 201 }, (_, i) => i / 200);
  const curve = steps.map((u) => segmentPoint(segment, u));
  const arcs = arcsOf(segment, tolerance).flatMap((arc) => Array.from({ length: 41 }, (_, i) => segmentPoint(arc, i / 40)));
  return Math.max(...curve.map((point) => chainDistance(arcs, point)), ...arcs.map((point) => chainDistance(curve, point)));
}

describe("arcsOf", () => {
  it("a cubic that is nearly a quarter circle are two arcs of its radius", () => {
    const arcs = arcsOf(cubic(100, 0, 100, 100 * HANDLE, 100 * HANDLE, 100, 0, 100), 0.05);
    expect(arcs).toHaveLength(2);
    for (const arc of arcs) expectClose(arc.kind === "arc" ? Math.hypot(arc.from.x - arc.centre.x, arc.from.y - arc.centre.y) : NaN, 100, 0.05);
  });
  it("an S, a straight one and one without handles keep to the tolerance", () => {
    for (const one of [cubic(0, 0, 50, 0, 0, 80, 60, 80), cubic(0, 0, 10, 10, 20, 20, 30, 30), cubic(0, 0, 0, 0, 30, 10, 30, 10)]) expect(apart(one, 0.01)).toBeLessThan(0.0115);
  });
  it("random cubics keep to the tolerance, each arc beginning where the one before ends and running on in its direction", () => {
    const source = randomSource(5);
    for (let n = 0; n < 12; n++) {
      const one = cubic(...Array.from({ length: 8 }, () => source.between(-100, 100)));
      // Chords of the measuring itself leave the curve by up to about 0.002.
      expect(apart(one, 0.02), `cubic ${n}`).toBeLessThan(0.025);
      const arcs = arcsOf(one, 0.02);
      arcs.slice(1).forEach((arc, i) => expect(arc.from).toEqual(arcs[i]!.to));
      expect([arcs[0]!.from, arcs.at(-1)!.to]).toEqual([one.from, one.to]);
    }
  });
  it("a line or an arc stay as they are", () => {
    const line = { kind: "line", from: { x: 0, y: 0 }, to: { x: 5, y: 5 } } as const;
    expect(arcsOf(line, 0.1)).toEqual([line]);
  });
  it("no tolerance is refused", () => {
    expect(() => arcsOf(cubic(0, 0, 1, 1, 2, 2, 3, 3), 0)).toThrow(RangeError);
  });
});
