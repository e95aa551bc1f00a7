import { describe, expect, it } from "vitest";
import { outlineCutter } from "../../../src/core/cut/outlineCutter";
import { linesThrough } from "../../../src/core/geometry/chain";

describe("outlineCutter", () => {
  const square = linesThrough([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 2 }, { x: 0, y: 2 }, { x: 0, y: 0 }]);
  it("has one reach for each side that is not upright", () => expect(outlineCutter(square, 1, [0, Infinity], 50, { kind: "top" }).reaches).toHaveLength(2));
  it("keeps direction, depth and radius", () => {
    const { direction, depth, radius } = outlineCutter(square, 1, [0, Infinity], 50, { kind: "top" });
    expect([direction, depth, radius]).toEqual([1, [0, Infinity], 50]);
  });
});
