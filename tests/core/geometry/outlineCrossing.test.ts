import { describe, expect, it } from "vitest";
import { linesThrough } from "../../../src/core/geometry/chain";
import { outlineCrossing } from "../../../src/core/geometry/outlineCrossing";

const outline = (...points: [number, number][]) => linesThrough([...points, points[0]!].map(([x, y]) => ({ x, y })));

describe("outlineCrossing", () => {
  it("outlineCrossing of a plain outline is null", () => expect(outlineCrossing([outline([0, 0], [10, 0], [10, 10], [0, 10])], 0.01)).toBeNull());
  it("outlineCrossing finds where an outline crosses itself, and the two segments", () => {
    const bow = outline([0, 0], [10, 10], [10, 0], [0, 10]);
    expect(outlineCrossing([bow], 0.01)).toEqual({ at: { x: 5, y: 5 }, segments: [bow[0], bow[2]] });
  });
  it("outlineCrossing finds two outlines that overlap", () =>
    expect(outlineCrossing([outline([0, 0], [4, 0], [4, 4], [0, 4]), outline([3, 1], [6, 1], [6, 2], [3, 2])], 0.01)).not.toBeNull());
  it("outlineCrossing of outlines that touch, or lie in each other, is null", () => {
    expect(outlineCrossing([outline([0, 0], [4, 0], [4, 4], [0, 4]), outline([4, 1], [6, 1], [6, 2], [4, 2])], 0.01)).toBeNull();
    expect(outlineCrossing([outline([0, 0], [4, 0], [4, 4], [0, 4]), outline([1, 1], [2, 1], [2, 2])], 0.01)).toBeNull();
  });
});
