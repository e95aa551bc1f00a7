import { expect, test } from "vitest";
import { scattered } from "../../../src/core/variant/scattered";

test("scattered gives every number below the count once, for any count and seed", () => {
  for (const seed of [0, 1, 7, 123456789]) {
    for (let count = 1; count <= 120; count++) {
      const all = new Set(Array.from({ length: count }, (_, place) => scattered(BigInt(place), BigInt(count), seed)));
      expect(all.size).toBe(count);
      for (const one of all) expect(one >= 0n && one < BigInt(count)).toBe(true);
    }
  }
});

test("scattered spreads the first places over a very large count", () => {
  const count = 10n ** 30n;
  const tenths = new Set(Array.from({ length: 30 }, (_, place) => Number((scattered(BigInt(place), count, 5) * 10n) / count)));
  expect(tenths.size).toBe(10);
});

test("scattered refuses a place outside the count", () => {
  expect(() => scattered(5n, 5n, 1)).toThrow(RangeError);
  expect(() => scattered(-1n, 5n, 1)).toThrow(RangeError);
});
