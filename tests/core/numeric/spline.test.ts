import { describe, expect, it } from "vitest";
import { naturalSpline, periodicSpline, splineValue, type Spline } from "../../../src/core/numeric/spline";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";

/** Random closed data: uneven places, the last value equal to the first. */
function closedData(seed: number): { at: number[]; value: number[] } {
  const source = randomSource(seed);
  const at = [0];
  const value = [source.between(-10, 10)];
  for (let i = source.whole(2, 20); i > 0; i--) {
    at.push(at.at(-1)! + source.between(0.5, 3));
    value.push(source.between(-10, 10));
  }
  at.push(at.at(-1)! + source.between(0.5, 3));
  value.push(value[0]!);
  return { at, value };
}

/** Value, slope and second derivative of piece i at its lower (u = 0) or upper (u = 1) end, from four values of the piece. */
function endOfPiece(spline: Spline, i: number, u: 0 | 1): { value: number; slope: number; bend: number } {
  const [from, to] = [spline.at[i]!, spline.at[i + 1]!];
  const h = to - from;
  const [y0, y1, y2, y3] = [0, 1 / 3, 2 / 3, 1].map((part) => splineValue(spline, from + part * h).value) as [number, number, number, number];
  const c1 = (-11 * y0 + 18 * y1 - 9 * y2 + 2 * y3) / 2;
  const c2 = (9 * (2 * y0 - 5 * y1 + 4 * y2 - y3)) / 2;
  const c3 = (9 * (-y0 + 3 * y1 - 3 * y2 + y3)) / 2;
  return { value: u === 0 ? y0 : y3, slope: (c1 + u * (2 * c2 + 3 * c3)) / h, bend: (2 * c2 + u * 6 * c3) / (h * h) };
}

function deviationFromCosine(count: number): number {
  const at = Array.from({ length: count + 1 }, (_, i) => (2 * Math.PI * i) / count);
  const spline = periodicSpline(at, at.map(Math.cos));
  let most = 0;
  for (let x = 0; x <= 2 * Math.PI; x += 0.01) most = Math.max(most, Math.abs(splineValue(spline, x).value - Math.cos(x)));
  return most;
}

describe("periodicSpline", () => {
  it("goes through its points", () => {
    for (let seed = 0; seed < 50; seed++) {
      const { at, value } = closedData(seed);
      const spline = periodicSpline(at, value);
      at.forEach((x, i) => expectClose(splineValue(spline, x).value, value[i]!, 1e-12));
    }
  });
  it("has one slope and one second derivative at every point, the seam included", () => {
    for (let seed = 0; seed < 50; seed++) {
      const { at, value } = closedData(seed);
      const spline = periodicSpline(at, value);
      for (let i = 0; i < at.length - 1; i++) {
        const [before, after] = [endOfPiece(spline, (i + at.length - 2) % (at.length - 1), 1), endOfPiece(spline, i, 0)];
        expectClose(before.slope, after.slope, 1e-9, `slope at ${i}`);
        expectClose(before.bend, after.bend, 1e-8, `second derivative at ${i}`);
      }
    }
  });
  it("states the second derivative the curve has", () => {
    const { at, value } = closedData(3);
    const spline = periodicSpline(at, value);
    for (let i = 0; i < at.length - 1; i++) expectClose(endOfPiece(spline, i, 0).bend, spline.bend[i]!, 1e-8);
  });
  it("of a constant is the constant", () => {
    expectClose(splineValue(periodicSpline([0, 1, 3, 4, 7], [5, 5, 5, 5, 5]), 2.2).value, 5, 1e-14);
  });
  it("does not depend on where the girth begins", () => {
    const spline = periodicSpline([0, 1, 3, 4, 7], [1, 2, -1, 4, 1]);
    const turned = periodicSpline([1, 3, 4, 7, 8], [2, -1, 4, 1, 2]);
    for (const x of [1.3, 2, 3.5, 5, 6.9]) expectClose(splineValue(spline, x).value, splineValue(turned, x).value, 1e-13);
  });
  it("strays from a cosine 1/16 as far with twice the points", () => {
    expectClose(deviationFromCosine(24) / deviationFromCosine(48), 16, 0.5);
  });
  // Interpolation by cubic splines: 5/384 of the step to the fourth times the greatest fourth derivative bounds a complete spline (C. A. Hall, 1968; from memory).
  it("strays from a cosine by less than 5/384 of the step to the fourth", () => {
    for (const count of [8, 12, 24]) expect(deviationFromCosine(count)).toBeLessThanOrEqual((5 / 384) * ((2 * Math.PI) / count) ** 4);
  });
  it("takes four points and refuses three", () => {
    expectClose(splineValue(periodicSpline([0, 1, 2, 3], [0, 1, -1, 0]), 1).value, 1, 1e-14);
    expect(() => periodicSpline([0, 1, 2], [0, 1, 0])).toThrow(RangeError);
  });
});

describe("naturalSpline", () => {
  const at = [0, 1, 2.5, 4, 4.5];
  const value = [1, -2, 3, 0.5, 2];
  it("goes through its points", () => at.forEach((x, i) => expectClose(splineValue(naturalSpline(at, value), x).value, value[i]!, 1e-14)));
  it("does not bend at its ends", () => {
    expectClose(endOfPiece(naturalSpline(at, value), 0, 0).bend, 0, 1e-12);
    expectClose(endOfPiece(naturalSpline(at, value), 3, 1).bend, 0, 1e-12);
  });
  it("has one slope and one second derivative at every inner point", () => {
    const spline = naturalSpline(at, value);
    for (let i = 1; i < at.length - 1; i++) {
      expectClose(endOfPiece(spline, i - 1, 1).slope, endOfPiece(spline, i, 0).slope, 1e-11);
      expectClose(endOfPiece(spline, i - 1, 1).bend, endOfPiece(spline, i, 0).bend, 1e-11);
    }
  });
  it("of points on a line is the line", () => {
    const line = naturalSpline(at, at.map((x) => 3 - 2 * x));
    for (const x of [0.3, 2, 4.2]) expectClose(splineValue(line, x).value, 3 - 2 * x, 1e-13);
  });
  it("of two points is the line between them", () => expectClose(splineValue(naturalSpline([1, 3], [0, 4]), 1.5).value, 1, 1e-15));
  it("is the smoothest curve through its points: less bent than the polynomial through them", () => {
    const spline = naturalSpline([0, 1, 2, 3], [0, 1, 0, 1]);
    const cubicBend = (x: number): number => 4 * x - 6; // of 2x³/3 - 3x² + 10x/3, the cubic through the same points
    let [ofSpline, ofCubic] = [0, 0];
    for (let k = 0; k < 3000; k++) {
      const x = (k + 0.5) / 1000;
      const i = Math.floor(x);
      ofSpline += (spline.bend[i]! * (i + 1 - x) + spline.bend[i + 1]! * (x - i)) ** 2 / 1000;
      ofCubic += cubicBend(x) ** 2 / 1000;
    }
    expect(ofSpline).toBeLessThan(ofCubic);
  });
  it("refuses a single point", () => expect(() => naturalSpline([0], [1])).toThrow(RangeError));
});

describe("splineValue", () => {
  const spline = naturalSpline([0, 1, 2.5, 4, 4.5], [1, -2, 3, 0.5, 2]);
  it("gives the slope the values have", () => {
    for (const x of [0.2, 0.9, 1.7, 3, 4.3]) {
      const step = 1e-5;
      const slope = (splineValue(spline, x + step).value - splineValue(spline, x - step).value) / (2 * step);
      expectClose(splineValue(spline, x).slope, slope, 1e-7);
    }
  });
  it("holds places beyond the ends at the ends", () => {
    expect(splineValue(spline, -3).value).toBe(1);
    expect(splineValue(spline, 9).value).toBe(2);
  });
});
