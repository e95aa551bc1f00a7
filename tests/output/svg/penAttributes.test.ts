import { describe, expect, it } from "vitest";
import { PENS, type PenName } from "../../../src/drawing/pens";
import { penAttributes, penClass } from "../../../src/output/svg/penAttributes";

const names = Object.keys(PENS) as PenName[];

describe("penAttributes", () => {
  it("gives every pen its own class and its width on the sheet", () => {
    expect(new Set(names.map(penClass)).size).toBe(names.length);
    for (const name of names) expect(penAttributes(name)["stroke-width"]).toBe(String(PENS[name].width));
  });

  it("draws nothing finer than a quarter of a millimetre but construction left faint", () => {
    for (const name of names) if (name !== "faint") expect(PENS[name].width).toBeGreaterThanOrEqual(0.25);
  });

  it("dashes hidden edges 12 to 3 and centre lines 24 to 3 widths", () => {
    expect(penAttributes("hidden edge")["stroke-dasharray"]).toBe("3 0.75");
    expect(penAttributes("centre line")["stroke-dasharray"]).toBe("6 0.75 0.25 0.75");
    expect(penAttributes("visible edge")["stroke-dasharray"]).toBeUndefined();
  });
});
