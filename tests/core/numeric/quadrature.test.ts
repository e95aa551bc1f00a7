import { describe, expect, it } from "vitest";
import { integrate } from "../../../src/core/numeric/quadrature";
import { expectClose } from "../../support/approximate";
import { completeIntegrals } from "../../support/elliptic";
import { randomSource } from "../../support/randomSource";

describe("integrate", () => {
  it("of a polynomial of degree 13 is exact", () => {
    const source = randomSource(6);
    for (let n = 0; n < 50; n++) {
      const c = Array.from({ length: 14 }, () => source.between(-1, 1));
      const [from, to] = [source.between(-1, 0), source.between(0, 1)];
      const value = (x: number): number => c.reduceRight((sum, a) => sum * x + a, 0);
      const primitive = (x: number): number => c.reduceRight((sum, a, k) => sum * x + a / (k + 1), 0) * x;
      expectClose(integrate(value, from, to, 1e-12), primitive(to) - primitive(from), 1e-13);
    }
  });
  it("of a sine over half a turn is 2", () => expectClose(integrate(Math.sin, 0, Math.PI, 1e-12), 2, 1e-13));
  it("of e^-x² over [-6, 6] is √π", () => expectClose(integrate((x) => Math.exp(-x * x), -6, 6, 1e-12), Math.sqrt(Math.PI), 1e-12));
  it("of 1 / (1 + x²) over [-50, 50] is 2 atan 50", () => expectClose(integrate((x) => 1 / (1 + x * x), -50, 50, 1e-11), 2 * Math.atan(50), 1e-11));
  it("of √x over [0, 1] is 2/3", () => expectClose(integrate(Math.sqrt, 0, 1, 1e-9), 2 / 3, 1e-8));
  it("of |x - 0.3| over [0, 1] is 0.29", () => expectClose(integrate((x) => Math.abs(x - 0.3), 0, 1, 1e-9), 0.29, 1e-9));
  it("of √(1 - m sin²) over a quarter turn is the elliptic integral E(m)", () => {
    for (const m of [0, 0.25, 0.5, 0.75, 0.9, 0.99]) {
      const value = integrate((x) => Math.sqrt(1 - m * Math.sin(x) ** 2), 0, Math.PI / 2, 1e-12);
      expectClose(value, completeIntegrals(m).second, 1e-12, `E(${m})`);
    }
  });
  it("changes sign when its ends change places", () => expectClose(integrate(Math.exp, 1, 0, 1e-12), 1 - Math.E, 1e-13));
  it("over nothing is 0", () => expect(integrate(Math.exp, 2, 2, 1e-12)).toBe(0));
  it("over two neighbouring stretches adds up", () => {
    const f = (x: number): number => Math.cos(5 * x) * Math.exp(-x);
    expectClose(integrate(f, 0, 1, 1e-12) + integrate(f, 1, 3, 1e-12), integrate(f, 0, 3, 1e-12), 3e-12);
  });
  it("is finite for a function that never agrees with itself", () => {
    const source = randomSource(7);
    expect(Number.isFinite(integrate(() => source.unit(), 0, 1, 1e-12))).toBe(true);
  });
});
