import fc from "fast-check";
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { type ParsedQuantity, parseQuantity } from "../../../src/core/job/parseQuantity";

const mm = (text: string) => parseQuantity(text, { units: "mm", kind: "length" });
const inch = (text: string) => parseQuantity(text, { units: "inch", kind: "length" });
const angle = (text: string) => parseQuantity(text, { units: "mm", kind: "angle" });
const count = (text: string) => parseQuantity(text, { units: "mm", kind: "count" });

/** Equal to 1e-12 of the value: a few roundings of double precision. */
function expectValue(parsed: ParsedQuantity, value: number): void {
  expect(parsed).toMatchObject({ ok: true });
  const error = Math.abs((parsed as { value: number }).value - value);
  expect(error).toBeLessThanOrEqual(1e-12 * Math.abs(value));
}

describe("parseQuantity of numbers", () => {
  it.each<[string, number]>([
    ["35", 35],
    ["  35  ", 35],
    ["\u00a035\u00a0", 35],
    ["1.5", 1.5],
    ["1,5", 1.5],
    ["1,234", 1.234],
    [".5", 0.5],
    [",5", 0.5],
    ["5.", 5],
    ["1e3", 1000],
    ["2.5E-2", 0.025],
    ["pi", Math.PI],
    ["PI", Math.PI],
    ["π", Math.PI],
    ["1 3/8", 1.375],
    ["1 9/8", 2.125],
    ["3/8", 0.375],
    ["½", 0.5],
    ["1½", 1.5],
    ["1 ⅜", 1.375],
    ["1 3⁄8", 1.375],
    ["-5", -5],
    ["−5", -5],
    ["+5", 5],
    ["--5", 5],
    ["-1 3/8", -1.375],
  ])("parseQuantity reads %s", (text, value) => expectValue(mm(text), value));

  it("parseQuantity never gives -0", () => {
    expect(mm("-0")).toEqual({ ok: true, value: 0 });
  });
});

describe("parseQuantity of arithmetic", () => {
  it.each<[string, number]>([
    ["180-2*45", 90],
    ["pi*90/16", (Math.PI * 90) / 16],
    ["(1+2)*3", 9],
    ["2×3", 6],
    ["2·3", 6],
    ["6÷3", 2],
    ["10 − 4", 6],
    ["10 – 4", 6],
    ["8/4/2", 1],
    ["8-4-2", 2],
    ["2^3", 8],
    ["2^3^2", 512],
    ["-2^2", -4],
    ["2^-1", 0.5],
    ["2*-3", -6],
    ["1 1/2*2", 3],
    ["2*1 1/2", 3],
    ["1 - 3/8", 0.625],
    ["1-3/8", 0.625],
  ])("parseQuantity works out %s", (text, value) => expectValue(mm(text), value));
});

describe("parseQuantity of units", () => {
  it.each<[string, number]>([
    ["35 mm", 35],
    ["35mm", 35],
    ["35 MM", 35],
    ["3.5 cm", 35],
    ["0,035 m", 35],
    ["1 in", 25.4],
    ["2 inches", 50.8],
    ['1"', 25.4],
    ["1″", 25.4],
    ["4 1/2 in", 114.3],
    ['3/8"', 9.525],
    ['½"', 12.7],
    ["1 ft", 304.8],
    ["5'", 1524],
    [`5' 3 1/2"`, 1612.9],
    [`5'3"`, 1600.2],
    ["5 ft 3 in", 1600.2],
    [`5' ½"`, 1536.7],
    [`5' - 3"`, 1447.8],
    ["10/2 mm", 5],
    ["10 mm/2", 5],
    ["2*35 mm", 70],
    ["35 mm*2", 70],
    ["(3+4) mm", 7],
    ["pi in", Math.PI * 25.4],
    ["1 in + 1 mm", 26.4],
    ["90 * (10 mm/4 mm)", 225],
    ["12 in / 2 in", 6],
    ["-(1 in)", -25.4],
  ])("parseQuantity reads %s as a length", (text, value) => expectValue(mm(text), value));

  it.each<[string, number]>([
    ["1", 25.4],
    ["4 1/2", 114.3],
    ["10 mm", 10],
    ["1 + 10 mm", 35.4],
    ["10 mm + 1", 35.4],
    ["2 * 3", 152.4],
    ["pi*4", Math.PI * 4 * 25.4],
    ["2^2", 101.6],
  ])("parseQuantity takes the plain numbers of %s as inches in a job in inches", (text, value) =>
    expectValue(inch(text), value),
  );

  it.each<[string, number]>([
    ["35", 35],
    ["35°", 35],
    ["35 deg", 35],
    ["360/16", 22.5],
    ["360°/16", 22.5],
    ["30° 15'", 30.25],
    [`30° 15' 36"`, 30.26],
    ["(pi/2) rad", 90],
  ])("parseQuantity reads %s as an angle", (text, value) => expectValue(angle(text), value));

  it("parseQuantity takes a unit to belong to the number just before it", () => {
    expect(angle("pi/2 rad")).toEqual({ ok: false, reason: "dimension", at: 2 });
  });

  it("parseQuantity gives a count as it is in any units", () => {
    expect(parseQuantity("2*8", { units: "inch", kind: "count" })).toEqual({ ok: true, value: 16 });
  });
});

describe("parseQuantity of what it refuses", () => {
  it.each<[string, string, number]>([
    ["", "empty", 0],
    ["   ", "empty", 0],
    ["1".repeat(201), "too-long", 200],
    ["(".repeat(40) + "1" + ")".repeat(40), "too-deep", 32],
    ["-".repeat(40) + "1", "too-deep", 32],
    ["2^".repeat(40) + "1", "too-deep", 65],
    ["1,234.5", "ambiguous", 0],
    ["1.234,5", "ambiguous", 0],
    ["1,234,567", "ambiguous", 0],
    ["10 + 1.2.3", "ambiguous", 5],
    [`5'-3"`, "ambiguous", 2],
    ["1 234", "syntax", 2],
    ["1 3", "syntax", 2],
    ["1.5 3/8", "syntax", 4],
    ["1 3.5/8", "syntax", 2],
    ["5' 3", "syntax", 4],
    ["5' 3 mm", "syntax", 5],
    ["1 +", "syntax", 3],
    ["* 2", "syntax", 0],
    ["(1", "syntax", 2],
    ["1)", "syntax", 1],
    ["()", "syntax", 1],
    ["2(3)", "syntax", 1],
    ["2 pi", "syntax", 2],
    ["mm", "syntax", 0],
    ["1 = 1", "syntax", 2],
    ["1;2", "syntax", 1],
    ["#", "syntax", 0],
    ["abc", "syntax", 0],
    ["2 + abc", "syntax", 4],
    ["1 furlong", "unit", 2],
    ["(1+2) furlong", "unit", 6],
    ["5' furlong", "unit", 3],
    ["1 deg", "unit", 2],
    ["NaN", "syntax", 0],
    ["Infinity", "syntax", 0],
    ["alert(1)", "syntax", 0],
    ["constructor", "syntax", 0],
    ["__proto__", "syntax", 0],
    ["35 mm * 40 mm", "dimension", 6],
    ["1 / 2.5 mm", "dimension", 2],
    ["2 mm mm", "syntax", 5],
    ["(2 mm) mm", "dimension", 7],
    ["2 mm ^ 2", "dimension", 5],
    ["1/0", "not-finite", 1],
    ["5 1/0", "not-finite", 3],
    ["1/(2-2)", "not-finite", 1],
    ["0/0", "not-finite", 1],
    ["1e999", "not-finite", 0],
    ["1e200*1e200", "not-finite", 5],
    ["1e308 m", "not-finite", 6],
    ["(-8)^0.5", "not-finite", 4],
  ])("parseQuantity refuses %s as %s at %i", (text, reason, at) => expect(mm(text)).toEqual({ ok: false, reason, at }));

  it("parseQuantity refuses a length for an angle", () => {
    expect(angle("35 mm")).toEqual({ ok: false, reason: "unit", at: 3 });
  });

  it("parseQuantity refuses a unit for a count", () => {
    expect(count("12 mm")).toEqual({ ok: false, reason: "unit", at: 3 });
  });

  it("parseQuantity accepts 32 brackets, one in another", () => {
    expectValue(mm(`${"(".repeat(32)}7${")".repeat(32)}`), 7);
  });

  it("parseQuantity gives a finite value or a place in the text for any text", () => {
    const piece = fc.constantFrom(..."0123456789.,+-*/^() '\"°½πeEmin", "mm", "ft", "pi", "1 3/8", "5'", "−", "×");
    fc.assert(
      fc.property(fc.oneof(fc.array(piece, { maxLength: 24 }), fc.array(fc.string(), { maxLength: 3 })), (pieces) => {
        const text = pieces.join("");
        const parsed = inch(text);
        if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
        else expect(parsed.at).toSatisfy((at: number) => at >= 0 && at <= text.length);
      }),
      { seed: 6, numRuns: 5000 },
    );
  });
});

describe("parseQuantity beside another evaluator", () => {
  it("parseQuantity works out random arithmetic as mathjs does", () => {
    let compared = 0;
    fc.assert(
      fc.property(arithmetic(4).filter(({ length }) => length <= 200), (text) => {
        const parsed = mm(text);
        const other: unknown = evaluate(text);
        if (!parsed.ok) expect(parsed.reason).toBe("not-finite");
        else {
          expectValue(parsed, other as number);
          compared++;
        }
      }),
      { seed: 7, numRuns: 6000 },
    );
    expect(compared).toBeGreaterThan(5000);
  });

  it("parseQuantity works out random lengths with units as mathjs does", () => {
    let compared = 0;
    fc.assert(
      fc.property(lengths(3), (text) => {
        const parsed = mm(text);
        expectValue(parsed, (evaluate(`(${text}) to mm`) as { toNumber(unit: string): number }).toNumber("mm"));
        compared++;
      }),
      { seed: 8, numRuns: 2000 },
    );
    expect(compared).toBe(2000);
  });
});

/** Arithmetic both evaluators know; values from 0.1 up keep sums from cancelling to the last digit often. */
function arithmetic(depth: number): fc.Arbitrary<string> {
  const number = fc.oneof(fc.integer({ min: 1, max: 99 }).map(String), fc.constantFrom("0.5", "2.25", "13.75", "pi"));
  if (depth === 0) return number;
  const inner = arithmetic(depth - 1);
  const operator = fc.constantFrom("+", "-", "*", "/", " + ", " - ", " * ", " / ");
  return fc.oneof(
    number,
    fc.tuple(inner, operator, inner).map((parts) => parts.join("")),
    inner.map((text) => `(${text})`),
    inner.map((text) => `-(${text})`),
    fc.tuple(inner, fc.constantFrom("2", "3", "-1")).map(([text, exponent]) => `(${text})^${exponent}`),
  );
}

/** Sums of positive lengths, each with its unit, multiplied and divided by plain numbers. */
function lengths(depth: number): fc.Arbitrary<string> {
  const plain = fc.integer({ min: 1, max: 40 });
  const length = fc
    .tuple(fc.double({ min: 0.25, max: 80, noNaN: true }), fc.constantFrom("mm", "cm", "m", "in", "ft"))
    .map(([number, unit]) => `${number} ${unit}`);
  if (depth === 0) return length;
  const inner = lengths(depth - 1);
  return fc.oneof(
    length,
    fc.tuple(inner, inner).map(([a, b]) => `${a} + ${b}`),
    fc.tuple(plain, inner).map(([n, a]) => `${n} * (${a})`),
    fc.tuple(inner, plain).map(([a, n]) => `(${a}) / ${n}`),
  );
}
