import { describe, expect, it } from "vitest";
import { offsetSegment } from "../../../src/core/geometry/offsetSegment";
import { type Arc, type Cubic, segmentPoint } from "../../../src/core/geometry/segment";
import { flattenSegments } from "../../../src/core/geometry/flatten";
import { chainDistance } from "../../support/chainDistance";
import { expectClose } from "../../support/approximate";

const hollow: Arc = { kind: "arc", from: { x: 10, y: 0 }, to: { x: 0, y: 10 }, centre: { x: 0, y: 0 }, anticlockwise: true };
const cubic: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 20, y: 0 }, c2: { x: 30, y: 10 }, to: { x: 40, y: 40 } };

describe("offsetSegment", () => {
  it("offsetSegment moves a line to its right", () => {
    const moved = offsetSegment({ kind: "line", from: { x: 0, y: 0 }, to: { x: 10, y: 0 } }, 3, 0.01);
    expect(moved).toEqual({ ok: true, segments: [{ kind: "line", from: { x: 0, y: -3 }, to: { x: 10, y: -3 } }] });
  });
  it("offsetSegment keeps an arc an arc about its centre", () => {
    const moved = offsetSegment(hollow, 4, 0.01);
    expect(moved).toMatchObject({ ok: true, segments: [{ kind: "arc", from: { x: 14, y: 0 }, centre: { x: 0, y: 0 } }] });
  });
  it("offsetSegment keeps a cubic's distance on both sides", () => {
    const points = flattenSegments([cubic], 1e-4);
    for (const width of [5, -5]) {
      const moved = offsetSegment(cubic, width, 0.001);
      if (!moved.ok) throw new Error("refused");
      for (const segment of moved.segments) for (const u of [0, 0.3, 0.6, 1]) expectClose(chainDistance(points, segmentPoint(segment, u)), 5, 0.002);
    }
  });
  it("offsetSegment refuses a bend as sharp as the distance, and says where", () => {
    expect(offsetSegment(hollow, -10, 0.01)).toMatchObject({ ok: false });
    const refused = offsetSegment(cubic, -200, 0.01);
    if (refused.ok) throw new Error("not refused");
    expectClose(chainDistance(flattenSegments([cubic], 1e-3), refused.at), 0, 1e-3);
  });
});
