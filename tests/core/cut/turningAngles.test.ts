import { describe, expect, it } from "vitest";
import { faceHeight } from "../../../src/core/cut/faceHeight";
import { turningAngles } from "../../../src/core/cut/turningAngles";
import { angleBetween } from "../../../src/core/numeric/angle";
import { randomSource } from "../../support/randomSource";
import { plane, randomCutter, rectangle, round } from "./cutters";


describe("turningAngles", () => {
  it("of a slanting plane are its direction and the opposite one", () => expect(turningAngles(plane(100, 1, 2), 0)).toEqual([2, 2 + Math.PI]));
  it("of a square plane are none", () => expect(turningAngles(plane(100), 0)).toEqual([]));
  it("of a level side are none", () => expect(turningAngles(rectangle(40, 40, 100), 0)).toEqual([]));
  it("of a circle off the middle are its crown on both walls and the contour", () => {
    const angles = turningAngles(round(20, 100, 0, 25), 0);
    for (const place of [Math.PI / 6, (5 * Math.PI) / 6, Math.PI / 2, -Math.PI / 2]) {
      expect(angles.some((angle) => angleBetween(angle, place) < 1e-12)).toBe(true);
    }
  });
  it("of a face that is not there are none", () => expect(turningAngles(round(20, 100), 9)).toEqual([]));
  it("hold every place where 2000 heights round the turn go from rising to falling, on 200 random cutters", () => {
    const source = randomSource(65);
    for (let n = 0; n < 200; n++) {
      const cutter = randomCutter(source);
      for (const face of cutter.kind === "plane" ? [0] : cutter.reaches.keys()) {
        const angles = turningAngles(cutter, face);
        const heights = Array.from({ length: 2001 }, (_, i) => faceHeight(cutter, face, (i * Math.PI) / 1000));
        for (let i = 1; i < 2000; i++) {
          const [a, b, c] = [heights[i - 1]!, heights[i]!, heights[i + 1]!];
          if ((b - a) * (c - b) < -1e-12) expect(angles.some((angle) => angleBetween(angle, (i * Math.PI) / 1000) < 0.007)).toBe(true);
        }
      }
    }
  });
});
