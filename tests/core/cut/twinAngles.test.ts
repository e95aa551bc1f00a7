import { describe, expect, it } from "vitest";
import { faceHeight } from "../../../src/core/cut/faceHeight";
import { areTwins, twinAngles } from "../../../src/core/cut/twinAngles";
import { TURN, angleBetween } from "../../../src/core/numeric/angle";
import { bisect } from "../../../src/core/numeric/bisect";
import { randomSource } from "../../support/randomSource";
import { plane, randomCutter, rectangle, round } from "./cutters";

const INNER = 46;

describe("areTwins", () => {
  const cutter = plane(100, 1);
  it("holds for one face found on two surfaces", () => expect(areTwins({ cutter, face: 0 }, { cutter: { ...cutter, radius: INNER }, face: 0 })).toBe(true));
  it("does not hold on one surface", () => expect(areTwins({ cutter, face: 0 }, { cutter, face: 0 })).toBe(false));
  it("does not hold for two faces", () => {
    const opening = round(20, 100);
    expect(areTwins({ cutter: opening, face: 0 }, { cutter: { ...opening, radius: INNER }, face: 1 })).toBe(false);
  });
  it("does not hold for faces of two cuts", () => {
    expect(areTwins({ cutter, face: 0 }, { cutter: { ...cutter, radius: INNER, owner: { kind: "cut", index: 5, id: "other" } }, face: 0 })).toBe(false);
  });
});

describe("twinAngles", () => {
  it("of a slanting plane are a quarter turn to both sides of its direction", () => {
    const angles = twinAngles(plane(100, 1), 0, INNER);
    for (const place of [Math.PI / 2, 1.5 * Math.PI]) expect(angles.some((angle) => angleBetween(angle, place) < 1e-14)).toBe(true);
  });
  it("of a level side are none", () => expect(twinAngles(rectangle(40, 40, 100), 0, INNER)).toEqual([]));
  it("hold every place where 2000 steps find the two heights crossing, on 200 random cutters", () => {
    const source = randomSource(69);
    for (let n = 0; n < 200; n++) {
      const cutter = randomCutter(source);
      const twin = { ...cutter, radius: INNER };
      for (const face of cutter.kind === "plane" ? [0] : cutter.reaches.keys()) {
        const gap = (theta: number): number => faceHeight(cutter, face, theta) - faceHeight(twin, face, theta);
        for (let i = 0; i < 2000; i++) {
          const [from, to] = [(i * TURN) / 2000, ((i + 1) * TURN) / 2000];
          if (!(gap(from) * gap(to) < -1e-20)) continue;
          const place = bisect(gap, from, to);
          expect(twinAngles(cutter, face, INNER).some((angle) => angleBetween(angle, place) < 1e-7), `cutter ${n}`).toBe(true);
        }
      }
    }
  });
});
