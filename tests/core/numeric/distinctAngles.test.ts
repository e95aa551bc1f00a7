import { describe, expect, it } from "vitest";
import { TURN, angleBetween } from "../../../src/core/numeric/angle";
import { distinctAngles } from "../../../src/core/numeric/distinctAngles";
import { randomSource } from "../../support/randomSource";

const NOISE = 1e-9;

describe("distinctAngles", () => {
  it("of none is none", () => expect(distinctAngles([], NOISE)).toEqual([]));
  it("puts the angles in order", () => expect(distinctAngles([3, 1, 2], NOISE)).toEqual([1, 2, 3]));
  it("keeps the earliest listed of near ones", () => expect(distinctAngles([2, 1 + 1e-12, 1], NOISE)).toEqual([1 + 1e-12, 2]));
  it("keeps angles further apart than the noise", () => expect(distinctAngles([1, 1 + 2e-9], NOISE)).toEqual([1, 1 + 2e-9]));
  it("takes 0 and just below a turn for one place, the earliest listed kept", () => {
    expect(distinctAngles([0, TURN - 1e-12], NOISE)).toEqual([0]);
    expect(distinctAngles([TURN - 1e-12, 0, 3], NOISE)).toEqual([3, TURN - 1e-12]);
  });
  it("takes a chain of near ones for one place", () => expect(distinctAngles([1 + 0.8e-9, 1, 1 + 1.6e-9], NOISE)).toEqual([1 + 0.8e-9]));
  it("of one place given over and over round the turn's end is one", () => {
    expect(distinctAngles([0, TURN - 1e-12, 1e-12, TURN - 2e-12, 0], NOISE)).toEqual([0]);
  });
  it("keeps no two near ones and loses no place, for random clusters", () => {
    const source = randomSource(5);
    for (let n = 0; n < 500; n++) {
      const places = Array.from({ length: source.whole(1, 8) }, () => source.pick([0, 1, 2, 3, 4, 5, 6]));
      const angles = places.map((place) => (place + source.between(-1e-10, 1e-10) + TURN) % TURN);
      const kept = distinctAngles(angles, NOISE);
      expect(kept.length).toBe(new Set(places).size);
      for (const angle of angles) expect(kept.some((one) => angleBetween(one, angle) < NOISE)).toBe(true);
    }
  });
});
