import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatQuantity, type QuantityFormat } from "../../../src/core/job/formatQuantity";
import { parseQuantity } from "../../../src/core/job/parseQuantity";

const MM: QuantityFormat = { units: "mm", kind: "length" };
const INCH: QuantityFormat = { units: "inch", kind: "length" };
const SIXTEENTHS: QuantityFormat = { ...INCH, style: "fraction", denominator: 16 };

describe("formatQuantity decimal", () => {
  it.each<[number, QuantityFormat, string]>([
    [35, MM, "35"],
    [35.5, MM, "35.5"],
    [35.1239, { ...MM, places: 3 }, "35.124"],
    [35.9999, { ...MM, places: 2 }, "36"],
    [100, { ...MM, places: 0 }, "100"],
    [35.5, { ...MM, decimalMark: "," }, "35,5"],
    [-35.5, MM, "−35.5"],
    [0, MM, "0"],
    [-0, MM, "0"],
    [-0.0001, { ...MM, places: 3 }, "0"],
    [114.3, INCH, "4.5"],
    [1, { ...INCH, places: 4 }, "0.0394"],
    [-25.4, INCH, "−1"],
    [22.5, { ...INCH, kind: "angle" }, "22.5"],
    [12, { ...INCH, kind: "count" }, "12"],
    [120, { ...MM, style: "fraction", denominator: 16 }, "120"],
  ])("formatQuantity of %d with %j is %s", (value, format, text) => expect(formatQuantity(value, format)).toBe(text));
});

describe("formatQuantity in fractions", () => {
  it.each<[number, number, string]>([
    [4.5, 16, "4 1/2"],
    [0.375, 16, "3/8"],
    [3, 16, "3"],
    [0, 16, "0"],
    [-4.5, 16, "−4 1/2"],
    [-0.375, 16, "−3/8"],
    [0.02, 16, "0"],
    [-0.02, 16, "0"],
    [0.99, 16, "1"],
    [1.99, 8, "2"],
    [0.484375, 64, "31/64"],
    [0.3333, 3, "1/3"],
    [2.5, 1, "3"],
    [4.1, 2, "4"],
  ])("formatQuantity of %d inches to 1/%i is %s", (inches, denominator, text) =>
    expect(formatQuantity(inches * 25.4, { ...SIXTEENTHS, denominator })).toBe(text),
  );
});

describe("formatQuantity of what it cannot show", () => {
  it.each([NaN, Infinity, -Infinity, 1e21])("formatQuantity throws for %d", (value) => {
    expect(() => formatQuantity(value, MM)).toThrow(RangeError);
  });

  it.each([0, -1, 1.5, NaN, 5000])("formatQuantity throws for a denominator of %d", (denominator) => {
    expect(() => formatQuantity(1, { ...SIXTEENTHS, denominator })).toThrow(RangeError);
  });

  it.each([-1, 1.5, 16, NaN])("formatQuantity throws for %d places", (places) => {
    expect(() => formatQuantity(1, { ...MM, places })).toThrow(RangeError);
  });
});

describe("formatQuantity read back by parseQuantity", () => {
  const value = fc.double({ min: -60_000, max: 60_000, noNaN: true });
  const mark = fc.constantFrom<"." | ",">(".", ",");

  it("formatQuantity decimal is read back to half its last place", () => {
    const format = fc.record({
      units: fc.constantFrom<"mm" | "inch">("mm", "inch"),
      kind: fc.constantFrom<"length" | "angle">("length", "angle"),
      places: fc.integer({ min: 0, max: 8 }),
      decimalMark: mark,
    });
    fc.assert(
      fc.property(value, format, (number, chosen) => {
        const size = chosen.units === "inch" && chosen.kind === "length" ? 25.4 : 1;
        expectReadBack(number, chosen, size * 10 ** -chosen.places);
      }),
      { seed: 9, numRuns: 3000 },
    );
  });

  it("formatQuantity in fractions is read back to half a part", () => {
    fc.assert(
      fc.property(value, fc.integer({ min: 1, max: 128 }), (number, denominator) => {
        expectReadBack(number, { ...SIXTEENTHS, denominator }, 25.4 / denominator);
      }),
      { seed: 10, numRuns: 3000 },
    );
  });

  it("formatQuantity of what was read back is the same text", () => {
    fc.assert(
      fc.property(value, mark, (number, decimalMark) => {
        const format = { ...INCH, decimalMark };
        const text = formatQuantity(number, format);
        const parsed = parseQuantity(text, format);
        expect(parsed.ok && formatQuantity(parsed.value, format)).toBe(text);
      }),
      { seed: 11, numRuns: 2000 },
    );
  });
});

/** Read back within half a `step`, and 1e-9 mm for the roundings on the way. */
function expectReadBack(value: number, format: QuantityFormat, step: number): void {
  const parsed = parseQuantity(formatQuantity(value, format), format);
  expect(parsed).toMatchObject({ ok: true });
  if (parsed.ok) expect(Math.abs(parsed.value - value)).toBeLessThanOrEqual(step / 2 + 1e-9);
}
