import { describe, expect, it } from "vitest";
import type { Cutter } from "../../../src/core/cut/cutter";
import { faceHeight, faceTangent } from "../../../src/core/cut/faceHeight";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";
import { RADIUS, plane, randomCutter, rectangle, round } from "./cutters";

const { PI } = Math;

/** Each face of 300 random cutters at a random θ well inside its reach. */
function onFaces(claim: (cutter: Cutter, face: number, theta: number) => void): void {
  const source = randomSource(62);
  for (let n = 0; n < 300; n++) {
    const cutter = randomCutter(source);
    const theta = source.between(0, 2 * PI);
    if (cutter.kind === "plane") claim(cutter, 0, theta);
    else {
      const t = RADIUS * Math.sin(theta - cutter.direction);
      cutter.reaches.forEach(({ from, to }, face) => {
        if (t > from + 0.5 && t < to - 0.5) claim(cutter, face, theta);
      });
    }
  }
}

describe("faceHeight", () => {
  it("of a plane is its height plus its slope times the distance towards its direction", () => {
    expectClose(faceHeight(plane(100, 0.5, 1), 0, 1.7), 100 + 25 * Math.cos(0.7), 1e-12);
  });
  // TEE-04: Apostol & Mnatsakanian, Amer. Math. Monthly 114 (2007), example 8: y² = a² - R² sin²(x / R).
  it("of a round opening is √(a² - R² sin² θ) above and below its centre", () => {
    const opening = round(30, 100);
    for (const theta of [-0.6, -0.2, 0, 0.3, 0.64]) {
      const half = Math.sqrt(900 - (50 * Math.sin(theta)) ** 2);
      const heights = [0, 1].map((face) => faceHeight(opening, face, theta)).sort((a, b) => a - b);
      expectClose(heights[0]!, 100 - half, 1e-11);
      expectClose(heights[1]!, 100 + half, 1e-11);
    }
  });
  it("of an opening as wide as the pipe is R |cos θ|, to the last digits beside the contour", () => {
    for (const away of [1e-3, 1e-6, 1e-9]) {
      expectClose(Math.abs(faceHeight(round(50, 0), 0, PI / 2 - away)), 50 * Math.sin(away), 1e-11 * away + 1e-14);
    }
  });
  it("beyond a circle's reach is the height of its upright tangent", () => expect(faceHeight(round(30, 100), 0, PI / 2)).toBe(100));
  it("of a tilted rectangle's side is on that side", () => {
    const slanting = rectangle(40, 40, 100, 0, 45);
    const heights = slanting.reaches.map((_, face) => faceHeight(slanting, face, 0));
    expectClose(Math.max(...heights), 100 + 20 * Math.SQRT2, 1e-12);
  });
  it("of a face that is not there throws", () => expect(() => faceHeight(round(30, 100), 2, 0)).toThrow(RangeError));
});

describe("faceTangent", () => {
  it("has the slope of the heights, on 300 random cutters", () => {
    onFaces((cutter, face, theta) => {
      const step = 1e-6;
      const slope = (faceHeight(cutter, face, theta + step) - faceHeight(cutter, face, theta - step)) / (2 * step * RADIUS);
      const { ds, dz } = faceTangent(cutter, face, theta, 1);
      expectClose(Math.atan2(dz, ds), Math.atan(slope), 1e-5);
    });
  });
  it("points towards growing θ", () => onFaces((cutter, face, theta) => expect(faceTangent(cutter, face, theta, 1).ds).toBeGreaterThan(0)));
  it("stands upright at the end of a circle's reach", () => {
    const { ds, dz } = faceTangent(round(30, 100), 0, Math.asin(0.6), -1);
    expect(Math.abs(ds / dz)).toBeLessThan(1e-6);
  });
  it("at the crossing of an opening as wide as the pipe runs at 45° to the crossing and from it", () => {
    const upper = round(50, 100).reaches.findIndex((reach) => reach.kind === "arc" && reach.side === 1);
    const [before, after] = [-1, 1].map((towards) => faceTangent(round(50, 100), upper, PI / 2, towards as 1 | -1));
    expectClose(before!.dz / before!.ds, -1, 1e-7);
    expectClose(after!.dz / after!.ds, 1, 1e-7);
  });
  it("is never nothing", () => onFaces((cutter, face, theta) => {
    const { ds, dz } = faceTangent(cutter, face, theta, 1);
    expect(Math.hypot(ds, dz)).toBeGreaterThan(0);
  }));
});
