// How closely and with how few segments the pattern follows a mitre, whose developed edge is known: y = h + r tan b cos(x / r).
import { describe, expect, it } from "vitest";
import type { Segment } from "../../src/core/index";
import { developedPipe } from "../support/developed";
import { isCut } from "../support/edgeLength";
import { segmentPoint } from "../support/loopSampling";
import { openingCut, pipeJob, planeCut, shapedCut, type Cut } from "../support/pipeJob";

const curvesOf = (cuts: readonly Cut[], options?: { chordTolerance: number }): readonly Segment[] =>
  developedPipe(pipeJob({ diameter: 100, length: 250, cuts }), options).pattern.loops.flatMap((loop) => loop.segments).filter((segment) => isCut(segment.owner));

/** Greatest distance of 200 points a segment from the sine wave of a mitre at b degrees, r = 50, by Newton steps to the nearest point. */
function deviationFromWave(segments: readonly Segment[], b: number, height: number): number {
  const rise = 50 * Math.tan((b * Math.PI) / 180);
  let widest = 0;
  for (const segment of segments) {
    for (let step = 0; step <= 200; step += 1) {
      const { x, y } = segmentPoint(segment, step / 200);
      let t = x;
      for (let round = 0; round < 8; round += 1) {
        const gap = height + rise * Math.cos(t / 50) - y;
        const slope = (-rise / 50) * Math.sin(t / 50);
        t -= (t - x + gap * slope) / (1 + slope * slope);
      }
      widest = Math.max(widest, Math.hypot(t - x, height + rise * Math.cos(t / 50) - y));
    }
  }
  return widest;
}

describe("the pattern of a mitre, r = 50", () => {
  it("at 45° follows the wave within 0.005 mm", () => expect(deviationFromWave(curvesOf([planeCut({ angle: 45, height: 100 })]), 45, 100)).toBeLessThanOrEqual(0.005));
  it("at 45° takes at most 8 curves", () => expect(curvesOf([planeCut({ angle: 45, height: 100 })]).length).toBeLessThanOrEqual(8));
  it("at 70° follows the wave within 0.005 mm", () => expect(deviationFromWave(curvesOf([planeCut({ angle: 70, height: 110 })]).filter(({ from, to }) => from.y < 250 && to.y < 250), 70, 110)).toBeLessThanOrEqual(0.005));
  for (const chordTolerance of [0.1, 0.01, 0.001, 1e-4, 1e-5]) {
    it(`follows the wave within ${chordTolerance} mm when asked`, () => {
      expect(deviationFromWave(curvesOf([planeCut({ angle: 45, height: 100 })], { chordTolerance }), 45, 100)).toBeLessThanOrEqual(chordTolerance);
    });
  }
  it("takes at most twice the curves for a tenfold closer pattern", () => {
    const count = (chordTolerance: number): number => curvesOf([planeCut({ angle: 45, height: 100 })], { chordTolerance }).length;
    for (const tolerance of [0.1, 0.01, 0.001]) expect(count(tolerance / 10)).toBeLessThanOrEqual(2 * count(tolerance));
  });
});

describe("the pattern of a pipe, r = 50", () => {
  const most: readonly (readonly [string, Cut, number])[] = [
    ["a square cut", planeCut({ height: 100 }), 1],
    ["a round opening of 60", openingCut({ shape: "round", diameter: 60 }, { height: 100, direction: 180 }), 8],
    ["a rectangle", openingCut({ shape: "rectangle", width: 40, length: 60, turn: 0 }, { height: 100, direction: 180 }), 4],
    ["a hollow of the pipe's radius", shapedCut({ shape: "hollow", radius: 50, centre: 0, height: 60 }), 12],
    ["an ogee of the pipe's radius", shapedCut({ shape: "ogee", low: 60, high: 160, rising: "right", radius: null }), 20],
    ["a step", shapedCut({ shape: "step", low: 60, high: 160, rising: "right", position: 10 }), 6],
  ];
  for (const [name, cut, count] of most) {
    it(`takes at most ${count} segments for ${name}`, () => expect(curvesOf([cut]).length).toBeLessThanOrEqual(count));
  }
});
