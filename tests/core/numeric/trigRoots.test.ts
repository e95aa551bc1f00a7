import { describe, expect, it } from "vitest";
import { angleBetween } from "../../../src/core/numeric/angle";
import { bisect } from "../../../src/core/numeric/bisect";
import { type TrigPolynomial, trigConstant, trigLinear, trigProduct, trigSum, trigValue } from "../../../src/core/numeric/trigPolynomial";
import { trigRoots } from "../../../src/core/numeric/trigRoots";
import { randomSource, type RandomSource } from "../../support/randomSource";

const { PI } = Math;

function randomPolynomial(source: RandomSource, degree: number): TrigPolynomial {
  const list = (): number[] => Array.from({ length: degree + 1 }, () => source.between(-1, 1));
  return { cos: list(), sin: [0, ...list().slice(1)] };
}

/** Every sign change on so many even steps of the turn, bisected: the slow, obvious answer. */
function signChanges(p: TrigPolynomial, steps: number): number[] {
  const value = (theta: number): number => trigValue(p, theta).value;
  return Array.from({ length: steps }, (_, i) => [(2 * PI * i) / steps, (2 * PI * (i + 1)) / steps] as const)
    .flatMap(([from, to]) => (value(from) * value(to) < 0 ? [bisect(value, from, to)] : []));
}

function nearest(roots: readonly number[], theta: number): number {
  return Math.min(...roots.map((root) => angleBetween(root, theta)));
}

/** 1 - cos(θ - at): touches zero at one place. */
function touching(at: number): TrigPolynomial {
  return trigLinear(1, -Math.cos(at), -Math.sin(at));
}

/** sin((θ - a) / 2) sin((θ - b) / 2), which is zero at a and b only. */
function zeroAt(a: number, b: number): TrigPolynomial {
  return trigLinear(Math.cos((a - b) / 2) / 2, -Math.cos((a + b) / 2) / 2, -Math.sin((a + b) / 2) / 2);
}

describe("trigRoots", () => {
  for (const degree of [1, 2, 3, 4]) {
    it(`of degree ${degree} finds every sign change within 1e-9, on 1000 random polynomials`, () => {
      const source = randomSource(degree);
      for (let n = 0; n < 1000; n++) {
        const p = randomPolynomial(source, degree);
        const roots = trigRoots(p);
        for (const zero of signChanges(p, 200)) expect(nearest(roots, zero)).toBeLessThan(1e-9);
      }
    });
    it(`of degree ${degree} finds nothing that is not nearly zero, on 1000 random polynomials`, () => {
      const source = randomSource(100 + degree);
      for (let n = 0; n < 1000; n++) {
        const p = randomPolynomial(source, degree);
        for (const root of trigRoots(p)) expect(Math.abs(trigValue(p, root).value)).toBeLessThan(1e-9);
      }
    });
    it(`of degree ${degree} finds at most ${2 * degree} places, all in [0, 2π)`, () => {
      const source = randomSource(200 + degree);
      for (let n = 0; n < 300; n++) {
        const roots = trigRoots(randomPolynomial(source, degree));
        expect(roots.length).toBeLessThanOrEqual(2 * degree);
        for (const root of roots) expect(root >= 0 && root < 2 * PI).toBe(true);
      }
    });
  }

  it("finds places where a polynomial of degree 1 only touches zero", () => {
    for (const at of [0, 0.3, PI / 2, PI, 4, 6.2]) expect(nearest(trigRoots(touching(at)), at)).toBeLessThan(3e-8);
  });
  it("finds a touching place and two crossings beside it within 1e-6, on 1000 random polynomials", () => {
    const source = randomSource(300);
    for (let n = 0; n < 1000; n++) {
      const [at, a, b] = [source.between(0, 2 * PI), source.between(0, 2 * PI), source.between(0, 2 * PI)];
      if (Math.min(angleBetween(at, a), angleBetween(at, b), angleBetween(a, b)) < 0.5) continue;
      const roots = trigRoots(trigProduct(touching(at), zeroAt(a, b)));
      for (const place of [at, a, b]) expect(nearest(roots, place)).toBeLessThan(1e-6);
    }
  });
  it("finds two touching places of one polynomial within 1e-6, on 1000 random polynomials", () => {
    const source = randomSource(301);
    for (let n = 0; n < 1000; n++) {
      const [a, b] = [source.between(0, 2 * PI), source.between(0, 2 * PI)];
      if (angleBetween(a, b) < 0.5) continue;
      const roots = trigRoots(trigProduct(touching(a), touching(b)));
      for (const place of [a, b]) expect(nearest(roots, place)).toBeLessThan(1e-6);
    }
  });
  it("finds eight crossings, some of them close together", () => {
    const places = [0.1, 0.101, 1, 1.0001, 3, 3.5, 5, 6];
    const p = trigProduct(trigProduct(zeroAt(0.1, 0.101), zeroAt(1, 1.0001)), trigProduct(zeroAt(3, 3.5), zeroAt(5, 6)));
    const roots = trigRoots(p);
    for (const place of places) expect(nearest(roots, place)).toBeLessThan(1e-8);
  });
  it("finds the crossing where three zeros fall together within 1e-4", () => {
    const source = randomSource(302);
    for (let n = 0; n < 300; n++) {
      const at = source.between(0, 2 * PI);
      const other = at + source.between(0.5, 5.5);
      expect(nearest(trigRoots(trigProduct(touching(at), zeroAt(at, other))), at)).toBeLessThan(1e-4);
    }
  });
  it("where four zeros fall together finds the place within 1e-3, or nothing at all", () => {
    for (const at of [0, 0.3, PI / 2, 2, PI, 4, 1.5 * PI]) {
      for (const root of trigRoots(trigProduct(touching(at), touching(at)))) expect(angleBetween(root, at)).toBeLessThan(1e-3);
    }
  });
  it("does not depend on the size of the polynomial", () => {
    const source = randomSource(303);
    for (let n = 0; n < 200; n++) {
      const p = randomPolynomial(source, source.whole(1, 4));
      const [plain, large] = [trigRoots(p), trigRoots(trigSum(trigConstant(0), p, 1e9))];
      for (const zero of signChanges(p, 400)) expect(Math.max(nearest(plain, zero), nearest(large, zero))).toBeLessThan(1e-9);
    }
  });
  it("does not mind coefficients of higher degree that are zero", () => {
    const roots = trigRoots({ cos: [0, 1, 0, 0, 0], sin: [0, 0, 0, 0, 0] });
    expect([PI / 2, 1.5 * PI].every((place) => nearest(roots, place) < 1e-12)).toBe(true);
  });
  it("of cos 4θ are the eight odd sixteenths of a turn", () => {
    const roots = trigRoots({ cos: [0, 0, 0, 0, 1], sin: [0, 0, 0, 0, 0] });
    expect(roots).toHaveLength(8);
    for (let k = 1; k < 16; k += 2) expect(nearest(roots, (k * PI) / 8)).toBeLessThan(1e-14);
  });
  it("of a constant are none, of zero too", () => {
    expect(trigRoots(trigConstant(3))).toEqual([]);
    expect(trigRoots(trigProduct(trigConstant(0), trigLinear(1, 2, 3)))).toEqual([]);
  });
  it("of a polynomial that stays above zero are none", () => expect(trigRoots(trigLinear(1.001, 0.6, 0.8))).toEqual([]));
});
