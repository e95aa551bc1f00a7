import { describe, expect, it } from "vitest";
import { flattenSegments } from "../../../src/core/geometry/flatten";
import { offChord } from "../../../src/core/geometry/offChord";
import { type Arc, type Cubic, type Segment, segmentPoint } from "../../../src/core/geometry/segment";
import type { Vec2 } from "../../../src/core/geometry/vector";
import { expectClose } from "../../support/approximate";
import { randomSource, type RandomSource } from "../../support/randomSource";

/** Greatest distance of 500 points of the segment from the nearest of the straight lines. */
function deviation(segment: Segment, points: readonly Vec2[]): number {
  let most = 0;
  for (let i = 0; i <= 500; i++) {
    const point = segmentPoint(segment, i / 500);
    let least = Infinity;
    for (let k = 1; k < points.length; k++) least = Math.min(least, offChord(point, points[k - 1]!, points[k]!));
    most = Math.max(most, least);
  }
  return most;
}

function randomCubic(source: RandomSource): Cubic {
  const place = () => ({ x: source.between(-10, 10), y: source.between(-10, 10) });
  return { kind: "cubic", from: place(), c1: place(), c2: place(), to: place() };
}

/** Symmetric about its middle, which lies on its chord. */
const sCurve: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 1, y: 3 }, c2: { x: 2, y: -3 }, to: { x: 3, y: 0 } };
/** A straight cubic that first runs back behind its start. */
const overshoot: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: -1, y: 0 }, c2: { x: 5, y: 0 }, to: { x: 10, y: 0 } };
const circle: Arc = { kind: "arc", from: { x: 50, y: 0 }, to: { x: 50, y: 0 }, centre: { x: 0, y: 0 }, anticlockwise: true };

describe("flattenSegments", () => {
  it("of nothing is nothing", () => expect(flattenSegments([], 0.1)).toEqual([]));
  it("of a line is its two ends", () => {
    expect(flattenSegments([{ kind: "line", from: { x: 0, y: 0 }, to: { x: 1, y: 1 } }], 0.1)).toEqual([{ x: 0, y: 0 }, { x: 1, y: 1 }]);
  });
  it("gives the place where two segments join once", () => {
    const line: Segment = { kind: "line", from: { x: 0, y: 0 }, to: { x: 1, y: 1 } };
    expect(flattenSegments([line, { kind: "line", from: line.to, to: { x: 2, y: 0 } }], 0.1)).toHaveLength(3);
  });
  it("does not give the place of a line without length twice", () => {
    expect(flattenSegments([{ kind: "line", from: { x: 1, y: 1 }, to: { x: 1, y: 1 } }], 0.1)).toHaveLength(1);
  });
  it("keeps an S-curve whose middle lies on its chord within the tolerance", () => {
    for (const tolerance of [1, 0.1, 0.001]) expect(deviation(sCurve, flattenSegments([sCurve], tolerance))).toBeLessThanOrEqual(tolerance);
  });
  it("does not leave out where a straight cubic runs back behind its start", () => {
    expect(deviation(overshoot, flattenSegments([overshoot], 0.005))).toBeLessThanOrEqual(0.005);
  });
  it("keeps any cubic within the tolerance, on 300 random ones", () => {
    const source = randomSource(30);
    for (let n = 0; n < 300; n++) {
      const cubic = randomCubic(source);
      const tolerance = source.pick([1, 0.1, 0.01]);
      expect(deviation(cubic, flattenSegments([cubic], tolerance))).toBeLessThanOrEqual(tolerance);
    }
  });
  it("keeps a whole circle within the tolerance", () => {
    for (const tolerance of [5, 0.1, 0.005]) expect(deviation(circle, flattenSegments([circle], tolerance))).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
  });
  it("of a circle ends where it began", () => expect(flattenSegments([circle], 0.1).at(-1)).toBe(circle.to));
  it("takes the fewest even steps on a circle", () => {
    const steps = flattenSegments([circle], 0.01).length - 1;
    expect(50 * (1 - Math.cos(Math.PI / (steps - 1)))).toBeGreaterThan(0.01);
  });
  it("takes twice the points on a cubic for a quarter of the tolerance, within a half", () => {
    const count = (tolerance: number): number => flattenSegments([sCurve], tolerance).length;
    expectClose(count(0.0001) / count(0.0004), 2, 0.5);
  });
  it("of a cubic that is one point is that point, once", () => {
    const place = { x: 1, y: 2 };
    expect(flattenSegments([{ kind: "cubic", from: place, c1: place, c2: place, to: place }], 0.1)).toHaveLength(1);
  });
  it("keeps to a circle smaller than the tolerance with three points", () => expect(flattenSegments([circle], 100)).toHaveLength(3));
  it("refuses a tolerance that is not above zero", () => {
    for (const tolerance of [0, -1, NaN]) expect(() => flattenSegments([circle], tolerance)).toThrow(RangeError);
  });
});
