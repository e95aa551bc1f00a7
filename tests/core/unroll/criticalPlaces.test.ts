import { describe, expect, it } from "vitest";
import { criticalPlaces, turningPlaces } from "../../../src/core/unroll/criticalPlaces";
import { expectAllClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut, type Cut } from "../../support/pipeJob";

function placesOf(cuts: readonly Cut[], seam: "front" | "right" | "back" = "right"): number[] {
  const { cutters, trimmed, pattern } = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: seam }, cuts }));
  const degrees = criticalPlaces(cutters, trimmed.edges, pattern.seam).map((theta) => (theta * 180) / Math.PI);
  return [...new Set(degrees.map((place) => Math.round(place * 1e6) / 1e6))].sort((a, b) => a - b);
}

describe("criticalPlaces", () => {
  it("of an uncut pipe are none", () => expect(placesOf([])).toEqual([]));
  it("of a mitre are its highest and its lowest element", () => expect(placesOf([planeCut({ angle: 30, height: 120, direction: 20 })])).toEqual([20, 200]));
  it("leave out the seam's own element", () => expect(placesOf([planeCut({ angle: 30, height: 120, direction: 20 })], "front")).toEqual([20, 200]));
  it("of a mitre with its crown at the seam are only the other", () => expect(placesOf([planeCut({ angle: 30, height: 120 })], "front")).toEqual([180]));
  it("of a round opening are its two sides and its crown", () => {
    expect(placesOf([openingCut({ shape: "round", diameter: 50 }, { height: 100 })])).toEqual([0, 30, 330]);
  });
  it("of a rectangle are its two sides", () => expect(placesOf([openingCut({ shape: "rectangle", width: 50, length: 20, turn: 0 }, { height: 100 })])).toEqual([30, 330]));
  it("of a step are the two elements it stands on", () => {
    expect(placesOf([shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: -25 })], "back")).toEqual([210, 330]);
  });
});

describe("turningPlaces", () => {
  const { cutters, trimmed } = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "right" }, cuts: [planeCut({ angle: 30, height: 120, direction: 20 })] }));
  it("lie between the ends of the edge", () => {
    const [edge] = trimmed.edges.filter(({ owner }) => owner.kind === "cut");
    expectAllClose(turningPlaces(cutters, edge!).sort((a, b) => a - b), [(200 * Math.PI) / 180, (380 * Math.PI) / 180], 1e-12);
  });
  it("of an edge along an element are none", () => {
    const seam = trimmed.edges.filter(({ owner }) => owner.kind === "seam");
    expect(seam.flatMap((edge) => turningPlaces(cutters, edge))).toEqual([]);
  });
});
