import { describe, expect, it } from "vitest";
import { distance, lengthOf, unit } from "../../../src/core/geometry/vector";
import { expectClose } from "../../support/approximate";

describe("vectors", () => {
  it("lengthOf(3, -4) is 5", () => expect(lengthOf(3, -4)).toBe(5));
  it("distance is the same both ways", () => expect(distance({ x: 1, y: 2 }, { x: 4, y: 6 })).toBe(distance({ x: 4, y: 6 }, { x: 1, y: 2 })));
  it("unit has length 1 and the same direction", () => {
    const { x, y } = unit(-30, 40);
    expectClose(x, -0.6, 1e-15);
    expectClose(y, 0.8, 1e-15);
  });
  it("unit of nothing throws", () => expect(() => unit(0, 0)).toThrow(RangeError));
  it("unit of what is not a number throws", () => expect(() => unit(NaN, 1)).toThrow(RangeError));
});
