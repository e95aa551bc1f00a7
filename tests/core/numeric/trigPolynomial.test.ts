import { describe, expect, it } from "vitest";
import { type TrigPolynomial, trigConstant, trigLinear, trigProduct, trigSum, trigValue } from "../../../src/core/numeric/trigPolynomial";
import { expectClose } from "../../support/approximate";
import { randomSource, type RandomSource } from "../../support/randomSource";

function randomPolynomial(source: RandomSource): TrigPolynomial {
  const degree = source.whole(0, 4);
  const list = (): number[] => Array.from({ length: degree + 1 }, () => source.between(-1, 1));
  return { cos: list(), sin: [0, ...list().slice(1)] };
}

/** Checks a claim about values on 500 random pairs of polynomials, each at a random angle. */
function onPairs(claim: (p: TrigPolynomial, q: TrigPolynomial, theta: number) => void): void {
  const source = randomSource(8);
  for (let n = 0; n < 500; n++) claim(randomPolynomial(source), randomPolynomial(source), source.between(0, 7));
}

describe("trigonometric polynomials", () => {
  it("trigConstant has its value everywhere", () => expect(trigValue(trigConstant(3), 1.2)).toEqual({ value: 3, slope: 0 }));
  it("trigLinear(a, b, c) is a + b cos + c sin", () => {
    expectClose(trigValue(trigLinear(1, 2, 3), 0.7).value, 1 + 2 * Math.cos(0.7) + 3 * Math.sin(0.7), 1e-15);
  });
  it("trigSum has the sum of the values", () => {
    onPairs((p, q, at) => expectClose(trigValue(trigSum(p, q), at).value, trigValue(p, at).value + trigValue(q, at).value, 1e-13));
  });
  it("trigSum with a factor adds so many times the second", () => {
    onPairs((p, q, at) => expectClose(trigValue(trigSum(p, q, -2.5), at).value, trigValue(p, at).value - 2.5 * trigValue(q, at).value, 1e-13));
  });
  it("trigProduct has the product of the values", () => {
    onPairs((p, q, at) => expectClose(trigValue(trigProduct(p, q), at).value, trigValue(p, at).value * trigValue(q, at).value, 1e-13));
  });
  it("trigProduct has the sum of the degrees", () => expect(trigProduct(trigLinear(1, 1, 1), trigLinear(1, 1, 1)).cos).toHaveLength(3));
  it("trigProduct has no sine of nothing", () => onPairs((p, q) => expect(trigProduct(p, q).sin[0]).toBe(0)));
  it("trigValue gives the slope the values have", () => {
    onPairs((p, _, at) => {
      const step = 1e-6;
      expectClose(trigValue(p, at).slope, (trigValue(p, at + step).value - trigValue(p, at - step).value) / (2 * step), 1e-7);
    });
  });
});
