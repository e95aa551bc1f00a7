import { describe, expect, it } from "vitest";
import { pathArea, segmentPoint } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { planeCut, shapedCut } from "../../support/pipeJob";
import { shopPipe, slope } from "./pieces";

const both = { top: { fit: "mean", gap: 0 }, bottom: { fit: "mean", gap: 0 } } as const;

describe("endPlates", () => {
  it("endPlates of a square end are discs", () => {
    const { plates } = shopPipe({ plates: both });
    expect(plates.map(({ shape, end, cutId }) => [shape, end, cutId])).toEqual([["disc", "top", null], ["disc", "bottom", null]]);
    for (const { blank } of plates) expectClose(blank.blankArea, 2500 * Math.PI, 1e-9);
  });
  it("endPlates of a 45° cut are ellipses of semi-axes r √2 and r", () => {
    const [plate] = shopPipe({ plates: { ...both, bottom: null } }, [slope]).plates;
    expect(plate).toMatchObject({ shape: "ellipse", cutId: "plane", name: "pipe top plate" });
    expectClose(plate!.semiAxes.long, 50 * Math.SQRT2, 1e-12);
    expectClose(pathArea(plate!.contour.segments), Math.PI * 50 * 50 * Math.SQRT2, 0.5);
    for (const segment of plate!.contour.segments) {
      const { x, y } = segmentPoint(segment, 0.37);
      expectClose(Math.hypot(x / 50, y / (50 * Math.SQRT2)), 1, 2e-4);
    }
  });
  it.each([0, 40, 180])("endPlates of a slope whose highest point just touches the top of the stock, seam at %i°, are one ellipse", (angle) => {
    const [plate, ...more] = shopPipe({ plates: { ...both, bottom: null } }, [planeCut({ angle: 35, direction: 180, at: "high", height: 200 })], { length: 200, seam: { at: "angle", angle } }).plates;
    expect(more).toEqual([]);
    expect(plate).toMatchObject({ shape: "ellipse", cutId: "plane" });
  });
  it("endPlates are less by the gap all round", () => {
    const [plate] = shopPipe({ plates: { top: { fit: "inside", gap: 1.5 }, bottom: null } }).plates;
    expectClose(plate!.blank.width, 98 - 3, 1e-9);
  });
  it("endPlates of a cut that runs out through the base are closed by a straight line, and the base by its own", () => {
    // Through the axis at the base, 45°: half an ellipse and half a disc.
    const { plates, problems } = shopPipe({ plates: both }, [planeCut({ angle: 45, direction: 180, height: 0 })]);
    expect(problems).toEqual([]);
    const [top, base] = plates;
    expect([top!.shape, base!.shape]).toEqual(["shaped", "shaped"]);
    expectClose(top!.blank.blankArea, (Math.PI * 2500 * Math.SQRT2) / 2, 0.5);
    expectClose(base!.blank.blankArea, (Math.PI * 2500) / 2, 1e-6);
  });
  it("endPlates of two slopes are two", () => {
    const roof = [planeCut({ id: "a", angle: 30, direction: 0, height: 120 }), planeCut({ id: "b", angle: 30, direction: 180, height: 120 })];
    const { plates } = shopPipe({ plates: { ...both, bottom: null } }, roof);
    expect(plates.map(({ cutId }) => cutId).sort()).toEqual(["a", "b"]);
    expect(plates.map(({ name }) => name)).toEqual(["pipe top plate 1", "pipe top plate 2"]);
    for (const { blank } of plates) expectClose(blank.blankArea, (Math.PI * 2500) / Math.cos(Math.PI / 6) / 2, 0.5);
  });
  it("endPlates of a shaped end are bent to its profile", () => {
    const { plates, problems } = shopPipe({ plates: { ...both, bottom: null } }, [shapedCut({ shape: "hollow", radius: 60, centre: 0, height: 120 })]);
    expect(plates.map(({ shape }) => shape)).toEqual(["bent"]);
    expect(problems).toEqual([]);
  });
  it.each(["inside", "mean"] as const)("endPlates of a vee found on the %s surface follow its sides out to the outside of a thick wall", (surface) => {
    const { plates } = shopPipe({ surface, plates: { top: { fit: "outside", gap: 0 }, bottom: null } }, [shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 })], { thickness: 30 });
    expect(plates.map(({ shape }) => shape)).toEqual(["bent"]);
    expectClose(plates[0]!.semiAxes.long, 65 * Math.SQRT2, 1e-9);
  });
  it("endPlates have no bend line where the gap took the plate away", () => {
    // A rise of half a mm, 1 mm off the contour: the gap of 2 mm takes more.
    const { plates } = shopPipe({ plates: { top: { fit: "mean", gap: 2 }, bottom: null } }, [shapedCut({ shape: "step", low: 150, high: 150.5, rising: "right", position: 49 })]);
    expect(plates.map(({ folds }) => folds)).toEqual([[]]);
  });
  it("endPlates of which the gap leaves nothing are refused", () =>
    expect(shopPipe({ plates: { top: { fit: "mean", gap: 50 }, bottom: null } }).problems).toMatchObject([{ code: "plate-gap-too-wide", field: "fabrication.plates.top.gap", value: 50 }]));
});
