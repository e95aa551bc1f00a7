import { expect, test } from "vitest";
import { rangeValues } from "../../../src/core/variant/rangeValues";

const range = (from: number, to: number, step: number) => ({ field: "part.diameter", from, to, step });

test("rangeValues goes from the first to the last in even steps, tenths staying tenths", () => {
  expect(rangeValues(range(30, 50, 5))).toEqual([30, 35, 40, 45, 50]);
  expect(rangeValues(range(0.1, 0.7, 0.1))).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
});

test("rangeValues stops before an end that is on no step, and has one value where both ends are the same", () => {
  expect(rangeValues(range(30, 34, 3))).toEqual([30, 33]);
  expect(rangeValues(range(12, 12, 5))).toEqual([12]);
});
