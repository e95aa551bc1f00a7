import { describe, expect, it } from "vitest";
import { METRIC } from "../../src/drawing/figures";

describe("METRIC", () => {
  it("rounds lengths to two places and drops zeros at the end", () => {
    expect([90, 282.743338, 0.5, 1.005, -0.001, 100].map((mm) => METRIC.length(mm))).toEqual(["90", "282.74", "0.5", "1", "0", "100"]);
  });

  it("writes angles with their sign", () => {
    expect(METRIC.angle(22.5)).toBe("22.5°");
  });
});
