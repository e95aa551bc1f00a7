import { describe, expect, it } from "vitest";
import { offChord } from "../../../src/core/geometry/offChord";

const [a, b] = [{ x: 0, y: 0 }, { x: 4, y: 0 }];

describe("offChord", () => {
  it("of a point beside the chord is its distance square to it", () => expect(offChord({ x: 1, y: -3 }, a, b)).toBe(3));
  it("of a point beyond an end is its distance from that end", () => {
    expect(offChord({ x: 7, y: 4 }, a, b)).toBe(5);
    expect(offChord({ x: -3, y: 4 }, a, b)).toBe(5);
  });
  it("of a point on the chord is 0", () => expect(offChord({ x: 3, y: 0 }, a, b)).toBe(0));
  it("from a chord without length is the distance from its place", () => expect(offChord({ x: 3, y: 4 }, a, a)).toBe(5));
});
