import { describe, expect, it } from "vitest";
import { flattenSegments } from "../../../src/core/geometry/flatten";
import { pathBounds } from "../../../src/core/geometry/pathBounds";
import type { Arc, Cubic } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";

describe("pathBounds", () => {
  it("pathBounds of half a circle reaches its crown", () => {
    const arc: Arc = { kind: "arc", from: { x: 5, y: 0 }, to: { x: -5, y: 0 }, centre: { x: 0, y: 0 }, anticlockwise: true };
    expect(pathBounds([arc])).toMatchObject({ to: { x: 5, y: 5 } });
  });
  it("pathBounds of a cubic is that of its points", () => {
    const cubic: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: -3, y: 9 }, c2: { x: 12, y: -5 }, to: { x: 4, y: 2 } };
    const [bounds, points] = [pathBounds([cubic])!, flattenSegments([cubic], 1e-6)];
    expectClose(bounds.from.x, Math.min(...points.map(({ x }) => x)), 1e-5);
    expectClose(bounds.to.x, Math.max(...points.map(({ x }) => x)), 1e-5);
    expectClose(bounds.from.y, Math.min(...points.map(({ y }) => y)), 1e-5);
    expectClose(bounds.to.y, Math.max(...points.map(({ y }) => y)), 1e-5);
  });
  it("pathBounds of nothing is null", () => expect(pathBounds([])).toBeNull());
});
