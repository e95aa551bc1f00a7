import { describe, expect, it } from "vitest";
import { roundPipe } from "../../../src/core/form/pipe";
import { pipeCutters } from "../../../src/core/part/pipeCutters";
import { extremeElement } from "../../../src/core/unroll/extremeElement";
import { expectClose } from "../../support/approximate";
import { keptElements } from "../../support/keptElements";
import { pipeJob, planeCut, shapedCut, type Cut } from "../../support/pipeJob";
import { randomSource } from "../../support/randomSource";

const pipe = roundPipe({ diameter: 100, basis: "mean", thickness: 0, length: 250, attitude: "upright" });
const degreesOf = (cuts: readonly Cut[], which: "shortest" | "longest"): number => (extremeElement(pipe, pipeCutters(pipe, cuts).cutters, which) * 180) / Math.PI;
const mitre = (direction: number): Cut => planeCut({ angle: 30, height: 120, direction });

describe("extremeElement", () => {
  it("of an uncut pipe is the back", () => expect(degreesOf([], "shortest")).toBe(180));
  it("of a mitre is shortest opposite its crown", () => expectClose(degreesOf([mitre(70)], "shortest"), 250, 1e-9));
  it("of a mitre is longest at its crown", () => expectClose(degreesOf([mitre(70)], "longest"), 70, 1e-9));
  it("comes as a round number of degrees, its last bits clean", () => {
    for (let direction = 0; direction < 360; direction += 15) expect(degreesOf([mitre(direction)], "longest")).toBeCloseTo(direction, 12);
  });
  it("of a plateau is its middle", () => {
    // Low for 120° about the right: x ≥ 25.
    expectClose(degreesOf([shapedCut({ shape: "step", low: 100, high: 150, rising: "left", position: 25 })], "shortest"), 90, 1e-9);
  });
  it("of a plateau over the front is the front, not its edge", () => {
    // The plane passes above the stock over 2 acos(10 / 50) about the front.
    expectClose(degreesOf([planeCut({ angle: 45, height: 240 })], "longest"), 0, 1e-9);
  });
  it("of two equal places is the one nearer the back", () => {
    // Lowest where x = 20: once on the front wall, once on the back wall.
    expectClose(degreesOf([shapedCut({ shape: "hollow", radius: 60, centre: 20, height: 100 })], "shortest"), 180 - (Math.asin(0.4) * 180) / Math.PI, 1e-6);
  });
  it("of two places as near the back is the left one", () => {
    expectClose(degreesOf([shapedCut({ shape: "hollow", radius: 60, centre: 0, height: 100 })], "longest"), 270, 1e-9);
  });
  it("of a hollow seen from the front is shortest at the back, as low as in front", () => {
    expectClose(degreesOf([shapedCut({ shape: "hollow", radius: 60, centre: 0, height: 100 })], "shortest"), 180, 1e-9);
  });
  it("looks at both ends", () => {
    const cuts = [mitre(0), planeCut({ id: "foot", end: "bottom", angle: 30, height: 40, direction: 0 })];
    expect(degreesOf(cuts, "shortest")).toBe(180);
  });
  it("is as short and as long as the best of 3600 elements, on 60 random pipes with two cuts a pipe", () => {
    const source = randomSource(80);
    for (let n = 0; n < 60; n++) {
      const cuts: Cut[] = [
        planeCut({ angle: source.between(0, 60), height: source.between(120, 220), direction: source.between(0, 360) }),
        source.chance(0.5)
          ? shapedCut({ shape: "hollow", radius: source.between(50, 120), centre: source.between(-10, 10), height: source.between(120, 180) }, { direction: source.between(0, 360) })
          : planeCut({ id: "foot", end: "bottom", angle: source.between(0, 45), height: 0, direction: source.between(0, 360) }),
      ];
      const { lengthAt } = keptElements(pipeJob({ diameter: 100, length: 250, cuts }));
      const lengths = Array.from({ length: 3600 }, (_, i) => lengthAt((i * Math.PI) / 1800));
      const at = (which: "shortest" | "longest"): number => lengthAt((degreesOf(cuts, which) * Math.PI) / 180);
      expect(at("shortest")).toBeLessThanOrEqual(Math.min(...lengths) + 1e-6);
      expect(at("longest")).toBeGreaterThanOrEqual(Math.max(...lengths) - 1e-6);
    }
  });
});
