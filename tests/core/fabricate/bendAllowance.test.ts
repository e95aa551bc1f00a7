import { describe, expect, it } from "vitest";
import { bendAllowance, bendDeduction, dinKFactor } from "../../../src/core/fabricate/bendAllowance";
import { expectClose } from "../../support/approximate";

describe("bendAllowance", () => {
  it("bendAllowance round a whole half turn is π × neutral radius", () => expectClose(bendAllowance({ insideRadius: 2, thickness: 1, angle: Math.PI }, 0.4), 2.4 * Math.PI, 1e-12));
  it.each([[-1, 1, 1, 0.5], [1, NaN, 1, 0.5], [1, 1, 0, 0.5], [1, 1, 4, 0.5], [1, 1, 1, 1.1]])(
    "bendAllowance of radius %d, thickness %d, angle %d, K %d is refused",
    (insideRadius, thickness, angle, kFactor) => expect(() => bendAllowance({ insideRadius, thickness, angle }, kFactor)).toThrow(RangeError),
  );
});

describe("dinKFactor", () => {
  it("dinKFactor of a wide bend is that of the mean line", () => expect(dinKFactor(60, 5)).toBe(0.5));
  it("dinKFactor refuses a sharp bend", () => expect(() => dinKFactor(0, 1)).toThrow(RangeError));
});

describe("bendDeduction", () => {
  it("bendDeduction under 15° is nothing", () => expect(bendDeduction({ insideRadius: 3, thickness: 1, angle: 0.2 }, 0.5)).toBe(0));
  it("bendDeduction goes over from one rule to the other at 90° without a jump", () => {
    const off = (angle: number) => bendDeduction({ insideRadius: 3, thickness: 1, angle }, 0.5);
    expectClose(off(Math.PI / 2 - 1e-9), off(Math.PI / 2), 1e-7);
  });
});
