import { describe, expect, it } from "vitest";
import type { Arc, Cubic } from "../../../src/core/geometry/segment";
import { segmentCurvature, segmentTangent } from "../../../src/core/geometry/segmentTangent";
import { expectClose } from "../../support/approximate";

const arc: Arc = { kind: "arc", from: { x: 5, y: 0 }, to: { x: 0, y: 5 }, centre: { x: 0, y: 0 }, anticlockwise: true };
const cubic: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 1, y: 0 }, c2: { x: 2, y: 1 }, to: { x: 2, y: 3 } };

describe("segmentTangent", () => {
  it("segmentTangent of an arc is square to its radius", () => {
    const { x, y } = segmentTangent(arc, 0.5);
    expectClose(x, -Math.SQRT1_2, 1e-12);
    expectClose(y, Math.SQRT1_2, 1e-12);
  });
  it("segmentTangent of a cubic points along its handles at the ends", () => {
    expect(segmentTangent(cubic, 0)).toEqual({ x: 1, y: 0 });
    expect(segmentTangent(cubic, 1)).toEqual({ x: 0, y: 1 });
  });
  it("segmentTangent of a cubic whose handle has no length is that beside its end", () => {
    const { x, y } = segmentTangent({ ...cubic, c1: cubic.from }, 0);
    expectClose(Math.atan2(y, x), Math.atan2(1, 2), 1e-5);
  });
});

describe("segmentCurvature", () => {
  it("segmentCurvature of an arc is 1 / radius, negative clockwise", () => {
    expectClose(segmentCurvature(arc, 0.3), 0.2, 1e-12);
    expectClose(segmentCurvature({ ...arc, anticlockwise: false }, 0.3), -0.2, 1e-12);
  });
  it("segmentCurvature of a cubic is the turning of its tangent by its length", () => {
    const angle = (u: number) => Math.atan2(segmentTangent(cubic, u).y, segmentTangent(cubic, u).x);
    const [u, h] = [0.4, 1e-5];
    const point = (v: number) => ({ x: 3 * (1 - v) ** 2 * v + 6 * (1 - v) * v * v + 2 * v ** 3, y: 3 * (1 - v) * v * v + 3 * v ** 3 });
    const length = Math.hypot(point(u + h).x - point(u - h).x, point(u + h).y - point(u - h).y);
    expectClose(segmentCurvature(cubic, u), (angle(u + h) - angle(u - h)) / length, 1e-6);
  });
});
