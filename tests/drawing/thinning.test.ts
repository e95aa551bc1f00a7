import { describe, expect, it } from "vitest";
import { stepFor, thinned } from "../../src/drawing/thinning";

const numbers = Array.from({ length: 24 }, (_, i) => i);
const thin = (most: number) => thinned(numbers, 24, (i) => i, (i) => i === 0, (chosen) => chosen.length <= most);

describe("thinned", () => {
  it("keeps all where all fit", () => {
    expect(thin(24)).toEqual(numbers);
  });

  it("keeps every second, third, … of the count", () => {
    expect(thin(12)).toEqual(numbers.filter((i) => i % 2 === 0));
    expect(thin(8)).toEqual(numbers.filter((i) => i % 3 === 0));
  });

  it("keeps what must be kept when nothing else fits", () => {
    expect(thin(0)).toEqual([0]);
  });
});

describe("stepFor", () => {
  it("is the least step that keeps lines apart", () => {
    expect([2, 1, 0.6, 0.3].map((pitch) => stepFor(pitch, 1))).toEqual([1, 1, 2, 4]);
  });
});
