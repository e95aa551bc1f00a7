import { describe, expect, it } from "vitest";
import { bisect } from "../../../src/core/numeric/bisect";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";

describe("bisect", () => {
  it("finds √2 to the last bit", () => expectClose(bisect((x) => x * x - 2, 0, 2), Math.SQRT2, 2 ** -52));
  it("finds a falling zero as well as a rising one", () => expectClose(bisect(Math.cos, 0, 3), Math.PI / 2, 2 ** -52));
  it("finds a jump", () => expectClose(bisect((x) => (x < 0.3 ? -1 : 1), 0, 1), 0.3, 2 ** -52));
  it("returns the low end when the function is zero there", () => expect(bisect((x) => x, 0, 1)).toBe(0));
  it("returns the high end when the function is zero only there", () => expectClose(bisect((x) => x - 1, 0, 1), 1, 2 ** -52));
  it("finds a zero a hair from zero to its own last bit", () => expectClose(bisect((x) => x - 1e-200, -1, 1), 1e-200, 1e-215));
  it("stays between the ends and finds the zero of any rising cubic", () => {
    const source = randomSource(4);
    for (let n = 0; n < 300; n++) {
      const zero = source.between(-5, 5);
      expectClose(bisect((x) => (x - zero) ** 3 + (x - zero), -6, 6), zero, 1e-15 * Math.max(1, Math.abs(zero)));
    }
  });
  it("throws where both ends have the same sign", () => expect(() => bisect((x) => x * x + 1, -1, 1)).toThrow(RangeError));
  it("throws where an end has no value", () => {
    expect(() => bisect(Math.log, -1, 2)).toThrow(RangeError);
    expect(() => bisect((x) => Math.log(x), 0.5, -2)).toThrow(RangeError);
  });
  it("throws for an end that is not finite", () => {
    expect(() => bisect((x) => x, -Infinity, Infinity)).toThrow(RangeError);
    expect(() => bisect((x) => (x > 0 ? 1 : -1), -1, Infinity)).toThrow(RangeError);
  });
});
