import { describe, expect, it } from "vitest";
import type { Loop, Owner, PatternSegment, Vec2 } from "../../src/core/index";
import { expectClose } from "./approximate";
import { distanceTo, finePoints, isInside, loopArea, segmentLength, segmentNormal, segmentPoint } from "./loopSampling";

const owner: Owner = { kind: "top" };
const half = (from: Vec2, to: Vec2): PatternSegment => ({ kind: "arc", from, to, centre: { x: 0, y: 0 }, anticlockwise: true, owner });
const disc: Loop = { kind: "outline", segments: [half({ x: 5, y: 0 }, { x: -5, y: 0 }), half({ x: -5, y: 0 }, { x: 5, y: 0 })] };
const wave: PatternSegment = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 1, y: 2 }, c2: { x: 2, y: -2 }, to: { x: 3, y: 0 }, owner };

describe("sampling of loops", () => {
  it("gives a disc its area", () => expectClose(loopArea(disc), 25 * Math.PI, 1e-6));
  it("gives a disc run clockwise its area with a minus sign", () => {
    const turned: Loop = { ...disc, segments: disc.segments.map((segment) => ({ ...segment, from: segment.to, to: segment.from, anticlockwise: false }) as PatternSegment).reverse() };
    expectClose(loopArea(turned), -25 * Math.PI, 1e-6);
  });
  it("gives half a circle its length", () => expectClose(segmentLength(disc.segments[0]!), 5 * Math.PI, 1e-7));
  it("puts the middle of a symmetric cubic in the middle", () => expect(segmentPoint(wave, 0.5)).toEqual({ x: 1.5, y: 0 }));
  it("has the disc on the left of its edge", () => {
    const [point, normal] = [segmentPoint(disc.segments[0]!, 0.3), segmentNormal(disc.segments[0]!, 0.3)];
    expect(isInside([finePoints(disc, 1e-4)], { x: point.x + 0.01 * normal.x, y: point.y + 0.01 * normal.y })).toBe(true);
  });
  it("has the outside on the right of its edge", () => {
    const [point, normal] = [segmentPoint(disc.segments[0]!, 0.3), segmentNormal(disc.segments[0]!, 0.3)];
    expect(isInside([finePoints(disc, 1e-4)], { x: point.x - 0.01 * normal.x, y: point.y - 0.01 * normal.y })).toBe(false);
  });
  it("measures the distance to the edge from inside and outside", () => {
    const run = finePoints(disc, 1e-5);
    expectClose(distanceTo([run], { x: 3, y: 0 }) + distanceTo([run], { x: 0, y: 9 }), 6, 1e-4);
  });
});
