import { describe, expect, it } from "vitest";
import { flattenSegments, pathArea, type EndPlate } from "../../../src/core/index";
import { expectAllClose, expectClose } from "../../support/approximate";
import { completeIntegrals } from "../../support/elliptic";
import { openingCut, planeCut, shapedCut } from "../../support/pipeJob";
import { shopPipe } from "./pieces";

// A pipe of 50 mean radius; the plate made to that.
const top = { top: { fit: "mean", gap: 0 }, bottom: null } as const;
const plates = (...choices: Parameters<typeof shopPipe>) => shopPipe(...choices).plates;
const profile = (shape: Parameters<typeof shapedCut>[0]) => plates({ plates: top }, [shapedCut(shape)]);

/** Area of the surface over the pipe's bore: the length of the profile at t by the chord there, summed (a slow oracle). */
function surface(slopeAt: (t: number) => number, steps = 200_000): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    // Even in the angle, so that the ends are fine enough.
    const angle = ((i + 0.5) / steps - 0.5) * Math.PI, t = 50 * Math.sin(angle);
    sum += Math.hypot(1, slopeAt(t)) * 2 * 50 * Math.cos(angle) * 50 * Math.cos(angle) * (Math.PI / steps);
  }
  return sum;
}

const area = (plate: EndPlate | undefined) => pathArea(plate!.contour.segments);

describe("the plate of a shaped end, laid flat", () => {
  it("of a hollow is as long as its arc and as wide as the pipe", () => {
    const [plate, ...more] = profile({ shape: "hollow", radius: 80, centre: 0, height: 120 });
    expect(more).toEqual([]);
    expect(plate).toMatchObject({ shape: "bent", cutId: "shaped", folds: [] });
    expectAllClose([plate!.blank.width, plate!.blank.height], [2 * 80 * Math.asin(50 / 80), 100], 0.02);
    expectClose(area(plate), surface((t) => t / Math.sqrt(80 * 80 - t * t)), 0.5);
  });
  // Archimedes: of two equal cylinders crossing square, each closes the other with 4 r² (MathWorld, "Steinmetz Solid": S = 16 r² in four).
  it("of a nose as round as the pipe has the area 4 r²", () => {
    const [plate] = profile({ shape: "nose", radius: 50, centre: 0, height: 150 });
    expectClose(area(plate), 4 * 50 * 50, 0.5);
    expectAllClose([plate!.blank.width, plate!.blank.height], [Math.PI * 50, 100], 1e-3);
  });
  it("of a vee is two halves of an ellipse with a bend between", () => {
    const [plate] = profile({ shape: "vee", angle: 90, centre: 0, height: 120 });
    expectClose(area(plate), Math.PI * 2500 * Math.SQRT2, 0.5);
    expect(plate!.folds).toHaveLength(1);
    expectAllClose([plate!.folds[0]!.from.x, plate!.folds[0]!.from.y, plate!.folds[0]!.to.y], [0, -50, 50], 1e-3);
  });
  it("of a step is the disc with the riser between its halves, bent at both edges of it", () => {
    const [plate] = profile({ shape: "step", low: 100, high: 140, rising: "right", position: 30 });
    expectClose(area(plate), Math.PI * 2500 + 40 * 80, 0.5);
    expectAllClose(plate!.folds.map(({ from }) => from.x).sort((a, b) => a - b), [30, 70], 1e-6);
    for (const { from, to } of plate!.folds) expectAllClose([from.y, to.y], [-40, 40], 1e-3);
  });
  it("of an ogee is smooth: no bend, the same whichever way it is seen", () => {
    const [plate] = profile({ shape: "ogee", low: 100, high: 150, rising: "right", radius: null });
    expect(plate!.folds).toEqual([]);
    const heights = flattenSegments(plate!.contour.segments, 0.01).map(({ y }) => y);
    expectClose(Math.max(...heights), -Math.min(...heights), 1e-6);
  });
  it("of a profile turned to any side, with an opening and on an upright seam, is the same", () => {
    const straight = area(profile({ shape: "hollow", radius: 80, centre: 10, height: 120 })[0]);
    for (const direction of [37, 90, 200]) {
      const [turned] = plates({ plates: top }, [shapedCut({ shape: "hollow", radius: 80, centre: 10, height: 120 }, { direction }), openingCut({ shape: "round", diameter: 20 }, { height: 40 })]);
      expectClose(area(turned), straight, 0.01);
    }
  });
  it("closes a bottom end as it closes a top", () => {
    const [plate] = plates({ plates: { top: null, bottom: { fit: "mean", gap: 0 } } }, [shapedCut({ shape: "nose", radius: 50, centre: 0, height: 30 }, { end: "bottom" })]);
    expectClose(area(plate), 4 * 50 * 50, 0.5);
  });
  it("beside the square end of the stock is a plate of its own, with the flat ones", () => {
    // The hollow is narrower than the pipe: two flat segments of the disc are left at its sides.
    const made = plates({ plates: top }, [shapedCut({ shape: "hollow", radius: 30, centre: 0, height: 160 })]);
    expect(made.map(({ shape }) => shape).sort()).toEqual(["bent", "shaped", "shaped"]);
    // 30 × 2 ∫ √(50² - 30² sin² φ) dφ over half a turn = 6000 E(0.36), and two upright sides of 10 by the chord of 80 there.
    expectClose(area(made.find(({ shape }) => shape === "bent")), 6000 * completeIntegrals(0.36).second + 2 * 10 * 80, 0.5);
    expectClose(made.reduce((sum, plate) => sum + (plate.shape === "shaped" ? area(plate) : 0), 0), Math.PI * 2500 - 2 * (30 * 40 + 2500 * Math.asin(0.6)), 0.5);
  });
  it("is less by the gap all round, its bends too", () => {
    const [plate] = plates({ plates: { top: { fit: "mean", gap: 2 }, bottom: null } }, [shapedCut({ shape: "vee", angle: 90, centre: 0, height: 120 })]);
    expectClose(plate!.blank.height, 96, 0.1);
    expectAllClose([plate!.folds[0]!.from.y, plate!.folds[0]!.to.y], [-48, 48], 0.1);
  });
  it("is refused where a slope crosses the profile askew", () => {
    const { plates: made, problems } = shopPipe({ plates: top }, [shapedCut({ shape: "hollow", radius: 60, centre: 0, height: 120 }), planeCut({ angle: 40, direction: 180, height: 130 })]);
    expect(made.every(({ shape }) => shape !== "bent")).toBe(true);
    expect(problems).toMatchObject([{ code: "plate-not-flat", field: "fabrication.plates.top" }]);
  });
});
