import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/approximate";
import { shapedCut } from "../../support/pipeJob";
import { shopPiece, slope } from "./pieces";

describe("stationHeights", () => {
  it("stationHeights on the mean surface differ by nothing", () => {
    for (const { topDifference, bottomDifference } of shopPiece({}, [slope]).heights) expect([topDifference, bottomDifference]).toEqual([0, 0]);
  });
  it("stationHeights on the outside of a 45° cut differ by half the thickness at the seam and half round, not at the quarters", () => {
    const { heights } = shopPiece({ surface: "outside" }, [slope]);
    // z = 120 - r cos θ with r = 51 for 50.
    for (const { theta, topDifference } of heights) expectClose(topDifference!, -Math.cos(theta), 1e-9);
  });
  it("stationHeights clear of both faces are never above the mean, nor above either face", () => {
    const tops = (surface: "clear" | "outside" | "inside") => shopPiece({ surface }, [slope]).heights.map(({ top }) => top!);
    const [clear, outside, inside] = [tops("clear"), tops("outside"), tops("inside")];
    clear.forEach((top, i) => expectClose(top, Math.min(outside[i]!, inside[i]!), 1e-9));
    for (const { topDifference } of shopPiece({ surface: "clear" }, [slope]).heights) expect(topDifference).toBeLessThanOrEqual(1e-12);
  });
  it("stationHeights of a wrap are those of the outside", () => {
    const tops = (one: ReturnType<typeof shopPiece>) => one.heights.map(({ top }) => top);
    expect(tops(shopPiece({ purpose: "wrap" }, [slope]))).toEqual(tops(shopPiece({ surface: "outside" }, [slope])));
  });
  it("stationHeights of a vee found on the inside of a thick wall go on along its sides to the mean surface", () => {
    const vee = shapedCut({ shape: "vee", angle: 90, centre: 0, height: 80 });
    // Mean radius 50, inside 40; across the vee a side is as high as it is far out.
    for (const { theta, top, topMean } of shopPiece({ surface: "inside" }, [vee], { thickness: 20 }).heights) {
      expectClose(top!, 80 + 40 * Math.abs(Math.sin(theta)), 1e-9);
      expectClose(topMean!, 80 + 50 * Math.abs(Math.sin(theta)), 1e-9);
    }
  });
});
