import { describe, expect, it } from "vitest";
import { joinedAtCrossing, segmentCrossing } from "../../../src/core/geometry/chainCrossing";
import type { Arc, Line } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";

const line = (x0: number, y0: number, x1: number, y1: number): Line => ({ kind: "line", from: { x: x0, y: y0 }, to: { x: x1, y: y1 } });
const arc: Arc = { kind: "arc", from: { x: 5, y: 0 }, to: { x: -5, y: 0 }, centre: { x: 0, y: 0 }, anticlockwise: true };

describe("segmentCrossing", () => {
  it("segmentCrossing of a line and an arc is exact", () => {
    const { u, v } = segmentCrossing(line(0, 0, 6, 8), arc)!;
    expectClose(u, 0.5, 1e-10);
    expectClose(v, Math.atan2(8, 6) / Math.PI, 1e-10);
  });
  it("segmentCrossing is nearest to the end of the first", () => expectClose(segmentCrossing(line(10, 3, -10, 3), arc)!.u, 0.7, 1e-10));
  it("segmentCrossing of segments that only would meet is null", () => expect(segmentCrossing(line(0, 0, 1, 1), arc)).toBeNull());
});

describe("joinedAtCrossing", () => {
  it("joinedAtCrossing leaves out what lies beyond the crossing", () => {
    const joined = joinedAtCrossing([line(0, 0, 10, 0), line(10, 0, 20, 0)], [line(12, -5, 12, 5), line(12, 5, 0, 5)])!;
    expect(joined.cutFirst).toBe(1);
    expect(joined.segments.map(({ to }) => [Math.round(to.x), Math.round(to.y)])).toEqual([[10, 0], [12, 0], [12, 5], [0, 5]]);
    expect(joined.segments[2]!.from).toBe(joined.segments[1]!.to);
  });
  it("joinedAtCrossing of chains that do not cross is null", () => expect(joinedAtCrossing([line(0, 0, 1, 0)], [line(0, 1, 1, 1)])).toBeNull());
});
