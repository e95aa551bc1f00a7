import { describe, expect, it } from "vitest";
import { arcByRadius, linesThrough, mirroredInBase, onArc } from "../../../src/core/geometry/chain";
import { arcSweep, segmentPoint } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";

const { PI } = Math;
const [a, b] = [{ x: 0, y: 0 }, { x: 6, y: 0 }];

describe("linesThrough", () => {
  it("joins the points in order", () => expect(linesThrough([a, b, { x: 6, y: 2 }]).map(({ from, to }) => [from, to])).toEqual([[a, b], [b, { x: 6, y: 2 }]]));
  it("leaves out a point given twice in a row", () => expect(linesThrough([a, a, b, b])).toHaveLength(1));
  it("of one point is nothing", () => expect(linesThrough([a])).toEqual([]));
});

describe("arcByRadius from (0, 0) to (6, 0) with radius 5", () => {
  // 3-4-5: the centre stands 4 above or below the chord's middle.
  const cases = [
    ["left the short way passes below the chord about a centre above", "left", false, 4, 2 * Math.asin(0.6)],
    ["right the short way passes above the chord about a centre below", "right", false, -4, -2 * Math.asin(0.6)],
    ["left the long way passes about a centre below", "left", true, -4, 2 * PI - 2 * Math.asin(0.6)],
    ["right the long way passes about a centre above", "right", true, 4, 2 * Math.asin(0.6) - 2 * PI],
  ] as const;
  for (const [name, turn, long, y, sweep] of cases) {
    it(`turning ${name}`, () => {
      const arc = arcByRadius(a, b, 5, turn, long);
      expectClose(arc.centre.x, 3, 1e-14);
      expectClose(arc.centre.y, y, 1e-14);
      expectClose(arcSweep(arc).sweep, sweep, 1e-14);
    });
  }
});

describe("arcByRadius", () => {
  it("has its ends on a circle of the radius, on 500 random arcs", () => {
    const source = randomSource(40);
    for (let n = 0; n < 500; n++) {
      const from = { x: source.between(-9, 9), y: source.between(-9, 9) };
      const to = { x: source.between(-9, 9), y: source.between(-9, 9) };
      const radius = (Math.hypot(to.x - from.x, to.y - from.y) / 2) * source.between(1, 10);
      const arc = arcByRadius(from, to, radius, source.pick(["left", "right"]), source.chance(0.5));
      expectClose(Math.hypot(from.x - arc.centre.x, from.y - arc.centre.y), radius, 1e-12 * radius);
      expectClose(Math.hypot(to.x - arc.centre.x, to.y - arc.centre.y), radius, 1e-12 * radius);
    }
  });
  it("sweeps more than half a turn only the long way, on 500 random arcs", () => {
    const source = randomSource(41);
    for (let n = 0; n < 500; n++) {
      const long = source.chance(0.5);
      const { sweep } = arcSweep(arcByRadius(a, b, source.between(3.01, 90), source.pick(["left", "right"]), long));
      expect(Math.abs(sweep) > PI).toBe(long);
    }
  });
  it("of half the distance is a half circle", () => expectClose(arcSweep(arcByRadius(a, b, 3, "left", false)).sweep, PI, 1e-15));
  it("forgives a radius short by 1e-10 of half the distance", () => expectClose(arcByRadius(a, b, 3 * (1 - 1e-10), "left", false).centre.y, 0, 1e-15));
  it("refuses a radius less than half the distance", () => expect(() => arcByRadius(a, b, 2.99, "left", false)).toThrow(RangeError));
  it("refuses a radius that is not a number", () => expect(() => arcByRadius(a, b, NaN, "left", false)).toThrow(RangeError));
  it("refuses two equal ends", () => expect(() => arcByRadius(a, a, 5, "left", false)).toThrow(RangeError));
});

describe("mirroredInBase", () => {
  const chain = [arcByRadius(a, b, 5, "left", false), ...linesThrough([b, { x: 8, y: 3 }])];
  it("turns every point over at y = 0", () => {
    mirroredInBase(chain).forEach((segment, i) => {
      for (const u of [0, 0.3, 1]) {
        const [turned, plain] = [segmentPoint(segment, u), segmentPoint(chain[i]!, u)];
        expectClose(turned.x, plain.x, 1e-14);
        expectClose(turned.y, -plain.y, 1e-14);
      }
    });
  });
  it("twice is the chain itself", () => expect(mirroredInBase(mirroredInBase(chain)).map(({ to }) => to.x)).toEqual(chain.map(({ to }) => to.x)));
});

describe("onArc", () => {
  const arc = arcByRadius(a, b, 5, "left", false);
  it("holds the points of the arc", () => {
    for (const u of [0, 1e-9, 0.5, 1]) expect(onArc(arc, segmentPoint(arc, u), 1e-9)).toBe(true);
  });
  it("holds no point of the rest of the circle", () => {
    const rest = { ...arc, anticlockwise: false };
    for (const u of [0.01, 0.5, 0.99]) expect(onArc(arc, segmentPoint(rest, u), 1e-9)).toBe(false);
  });
  it("holds a point just before its start within the noise", () => {
    const rest = { ...arc, anticlockwise: false };
    expect(onArc(arc, segmentPoint(rest, 1e-9), 1e-6)).toBe(true);
  });
});
