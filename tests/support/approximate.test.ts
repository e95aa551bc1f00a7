import { describe, expect, it } from "vitest";
import { expectAllClose, expectClose, isClose } from "./approximate";

describe("isClose", () => {
  it("holds where the difference equals the tolerance", () => expect(isClose(1.5, 1, 0.5)).toBe(true));
  it("fails where the difference exceeds the tolerance", () => expect(isClose(1.5000001, 1, 0.5)).toBe(false));
  it("fails where the value lies below by more than the tolerance", () => expect(isClose(0.4, 1, 0.5)).toBe(false));
  it("fails on NaN even with an unlimited tolerance", () => expect(isClose(NaN, 1, Infinity)).toBe(false));
  it("fails where NaN is expected", () => expect(isClose(1, NaN, Infinity)).toBe(false));
  it("fails on two equal infinities", () => expect(isClose(Infinity, Infinity, 1)).toBe(false));
  it("refuses a negative tolerance", () => expect(() => isClose(1, 1, -1)).toThrow(RangeError));
  it("refuses a tolerance that is not a number", () => expect(() => isClose(1, 1, NaN)).toThrow(RangeError));
});

describe("expectClose", () => {
  it("passes a value within the tolerance", () => expect(() => expectClose(1, 1.1, 0.2)).not.toThrow());
  it("names what strays and by how much", () => expect(() => expectClose(1, 2, 0.5, "girth")).toThrow(/girth: got 1, expected 2/));
  it("throws on NaN", () => expect(() => expectClose(NaN, 2, 10)).toThrow());
  it("throws on a missing value", () => expect(() => expectClose(undefined as unknown as number, 0, 10)).toThrow());
});

describe("expectAllClose", () => {
  it("passes equal lists", () => expect(() => expectAllClose([1, 2], [1, 2], 0)).not.toThrow());
  it("throws on a surplus item", () => expect(() => expectAllClose([1, 2, 3], [1, 2], 1)).toThrow(/3 items, expected 2/));
  it("throws on a missing item", () => expect(() => expectAllClose([1], [1, 2], 1)).toThrow(/1 items, expected 2/));
  it("throws on NaN in the list", () => expect(() => expectAllClose([1, NaN], [1, 2], 9)).toThrow());
  it("names the item that strays", () => expect(() => expectAllClose([1, 5], [1, 2], 1, "tops")).toThrow(/tops\[1\]/));
});
