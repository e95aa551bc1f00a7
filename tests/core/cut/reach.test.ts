import { describe, expect, it } from "vitest";
import { reachesOf } from "../../../src/core/cut/reach";
import type { Reach } from "../../../src/core/cut/cutter";
import { arcByRadius, linesThrough } from "../../../src/core/geometry/chain";
import { type Arc, segmentPoint } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";
import { star } from "./cutters";

function heightOf(reach: Reach, t: number): number {
  if (reach.kind === "line") return reach.z + reach.slope * t;
  return reach.z + reach.side * Math.sqrt(Math.max(0, reach.radius ** 2 - (t - reach.t) ** 2));
}

const circle: Arc = { kind: "arc", from: { x: 7, y: 3 }, to: { x: 7, y: 3 }, centre: { x: 2, y: 3 }, anticlockwise: true };

describe("reachesOf", () => {
  it("of an upright line is nothing", () => expect(reachesOf(linesThrough([{ x: 1, y: 0 }, { x: 1, y: 5 }]))).toEqual([]));
  it("of a line drawn leftwards is the same as rightwards", () => {
    expect(reachesOf(linesThrough([{ x: 4, y: 2 }, { x: 0, y: 0 }]))).toEqual(reachesOf(linesThrough([{ x: 0, y: 0 }, { x: 4, y: 2 }])));
  });
  it("of a whole circle are its upper and lower half", () => {
    const reaches = reachesOf([circle]);
    expect(reaches.map((reach) => [reach.from, reach.to, reach.kind === "arc" && reach.side])).toEqual([[-3, 7, 1], [-3, 7, -1]]);
  });
  it("of an arc round an upright tangent are two that meet there", () => {
    const reaches = reachesOf([arcByRadius({ x: 3, y: -4 }, { x: 3, y: 4 }, 5, "left", false)]);
    expect(reaches.map(({ from, to }) => [from, to])).toEqual([[3, 5], [3, 5]]);
  });
  it("ends exactly where the segments end, so that neighbours leave no gap", () => {
    const source = randomSource(60);
    for (let n = 0; n < 200; n++) {
      const outline = star(source, 0, 0);
      const ends = new Set(reachesOf(outline).flatMap(({ from, to }) => [from, to]));
      for (const { from } of outline) expect(ends.has(from.x)).toBe(true);
    }
  });
  it("passes through every point of the outline, on 200 random ones", () => {
    const source = randomSource(61);
    for (let n = 0; n < 200; n++) {
      const outline = star(source, 0, 0);
      const reaches = reachesOf(outline);
      for (const segment of outline) {
        const { x, y } = segmentPoint(segment, source.between(0.01, 0.99));
        const gaps = reaches.filter(({ from, to }) => x >= from && x <= to).map((reach) => Math.abs(heightOf(reach, x) - y));
        expectClose(Math.min(...gaps), 0, 1e-6);
      }
    }
  });
});
