import { describe, expect, it } from "vitest";
import { firstDifference, kept } from "./normalised";

describe("firstDifference", () => {
  it("is null for drawings alike within the tolerance", () => {
    expect(firstDifference('<path d="M1 2L3.01 4"/>', '<path d="M1 2L3 4"/>', 0.011)).toBeNull();
  });

  it("shows the line where a number strays", () => {
    expect(firstDifference('a\n<path d="M1 2"/>', 'a\n<path d="M1 2.5"/>', 0.011)).toContain("line 2");
  });

  it("shows another pen, a missing line, a missing number", () => {
    for (const [one, other] of [["pen-a 1", "pen-b 1"], ["a\nb", "a"], ["1 2", "1"]] as const) expect(firstDifference(one, other, 1)).not.toBeNull();
  });
});

describe("kept", () => {
  it("rounds numbers to two places and leaves the rest", () => {
    expect(kept("M1.2345 -0.0004L3 4.5")).toBe("M1.23 0L3 4.5");
  });
});
