import { describe, expect, it } from "vitest";
import { costOf, deviationOf, foundQuantity, strayBound, unsureCost } from "../../../../src/core/inspect/drawn/misfit";
import { expectClose } from "../../../support/approximate";

describe("misfit", () => {
  it("counts a stray reading alike however far it strays", () => {
    expect(costOf(1.1, 1)).toBe(costOf(50, 1));
    expect(costOf(1.1, 1)).toBeGreaterThan(costOf(0.9, 1));
    expect(costOf(Infinity, strayBound(1))).toBe(costOf(-3, strayBound(1)));
  });

  it("takes the nearest of two heights, and none at all as infinitely far", () => {
    expectClose(deviationOf(61, [90, 60]), 1, 1e-12);
    expect(deviationOf(61, [])).toBe(Infinity);
  });

  it("finds a quantity that most rows agree on, whatever a third of them says", () => {
    const rows = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((x) => ({ value: 2.5 * x + (x % 3 === 0 ? 40 : 0), base: [0], slope: [x] }));
    expectClose(foundQuantity(rows, 1, -Infinity, Infinity), 2.5, 1e-9);
    expect(foundQuantity(rows, 1, 0, 1)).toBe(1);
    expect(foundQuantity([], 1, 0, 1)).toBe(0);
  });

  it("forgives a hand that is unsure all over, more than its squares would", () => {
    const unsure = [0.9, -0.9, 0.9, -0.9, 0.9, -0.9, 0.9, -0.9];
    expect(unsureCost(unsure, 1, 1)).toBeLessThan(unsure.reduce((sum, one) => sum + costOf(one, 1), 0) / 2);
    expectClose(unsureCost([0.3, 0.3, -0.3], 1, 1), 3, 1e-9);
  });
});
