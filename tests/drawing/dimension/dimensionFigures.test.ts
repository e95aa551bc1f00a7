import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { dimensionFigures } from "../../../src/drawing/dimension/dimensionFigures";
import { developed } from "../../support/developed";
import { type Cut, openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";

/** Each figure on the board and the field it states. */
function figures(cuts: readonly Cut[], pipe: Partial<Parameters<typeof pipeJob>[0]> = {}): Record<string, string | null> {
  const drawn = board(developed(pipeJob({ diameter: 100, length: 200, cuts, ...pipe })), { width: 320, height: 200 });
  return Object.fromEntries(dimensionFigures(drawn.items).map(({ text, clause, field }) => [text, field === null ? null : `${clause} ${field}`]));
}

describe("dimensionFigures", () => {
  it("names the fields of a plane: its angle, and its height where the job gives it", () => {
    const found = figures([planeCut({ angle: 30, direction: 90, height: 180, at: "high" })]);
    expect(found).toMatchObject({ "⌀100": "part diameter", "180": "cut:plane height", "30°": "cut:plane angle", "122.26": null });
  });

  it("names the length of the pipe where nothing is cut, and nothing for the stretch-out", () => {
    expect(figures([])).toMatchObject({ "200": "part length", "stretch-out 314.16": null });
  });

  it("names no field for a mean diameter that is not the job's", () => {
    expect(figures([], { basis: "outside", thickness: 2 })).toMatchObject({ "⌀98 mean": null });
  });

  it("names size, height and offset of an opening", () => {
    const found = figures([openingCut({ shape: "rectangle", width: 24, length: 30, turn: 90 }, { height: 80, offset: 11 })]);
    expect(found).toMatchObject({ "80": "cut:opening height", "24": "cut:opening outline.width", "30": "cut:opening outline.length", "11": "cut:opening offset" });
    expect(figures([openingCut({ shape: "round", diameter: 36 }, { height: 80 })])).toMatchObject({ "⌀36": "cut:opening outline.diameter" });
  });

  it("names radius and height of a hollow, and the direction of what stands off the cross", () => {
    expect(figures([shapedCut({ shape: "hollow", radius: 70, centre: 0, height: 120 })])).toMatchObject({ R70: "cut:shaped profile.radius", "120": "cut:shaped profile.height" });
    expect(figures([planeCut({ angle: 30, direction: 40, height: 120 })])).toMatchObject({ "40°": "cut:plane direction" });
  });

  it("names a height of a free profile only when one corner alone has it", () => {
    const found = figures([shapedCut({ shape: "free", start: { x: -60, z: 100 }, legs: [{ to: { x: 10, z: 100 } }, { to: { x: 60, z: 150 } }] })]);
    expect(found["100"]).toBeNull();
  });
});
