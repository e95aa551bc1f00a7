import { describe, expect, it } from "vitest";
import type { FabricationChoices, Job } from "../../../src/core/index";
import { clauseId, type ShopClause } from "../../../src/app/describe/shop/shopClauses";
import { formatOf } from "../../../src/app/quantity/format";
import { fabricationOf } from "../../../src/app/shop/fabricationOf";
import { foundLines, kilograms } from "../../../src/app/shop/foundLines";
import { developed, pipeWith, slant } from "../pipe";

const format = formatOf("mm", { places: 2, denominator: 0, comma: false });

function line(clause: ShopClause, change: Partial<FabricationChoices>, part: Partial<Job["part"]> = {}) {
  const job = pipeWith([slant], part);
  const development = developed({ ...job, fabrication: { ...job.fabrication, ...change } });
  return foundLines(development, fabricationOf(development), format).get(clauseId(clause));
}

describe("foundLines", () => {
  it("a grooved seam takes three times its width, shared between the edges", () => {
    expect(line("seam", { seam: { kind: "grooved", width: 6, share: 0.5 } })).toBe("3 × 6 = 18 mm added: 9 on the first edge, 9 on the last");
  });

  it("a wired edge takes two and a half wires and the thickness", () => {
    expect(line("edges.bottom", { edges: { top: { kind: "none" }, bottom: { kind: "wired", wire: 3, thickness: true } } }, { thickness: 0.8 })).toBe("2½ × 3 + 0.8 = 8.3 mm added");
  });

  it("a hem takes its width and needs no sum; a double hem takes two", () => {
    const hemmed = (kind: "hem" | "double-hem") => line("edges.bottom", { edges: { top: { kind: "none" }, bottom: { kind, width: 6 } } });
    expect([hemmed("hem"), hemmed("double-hem")]).toEqual([undefined, "2 × 6 = 12 mm added"]);
  });

  it("an allowance that cannot be made has no sum", () => {
    expect(line("edges.bottom", { edges: { top: { kind: "none" }, bottom: { kind: "hem", width: 500 } } })).toBeUndefined();
  });

  it("the plate of a slanting end is an ellipse of d and d / cos of the slope", () => {
    expect(line("plates.top", { plates: { top: { fit: "outside", gap: 0 }, bottom: null } })).toBe(`Ellipse ${(90 / Math.cos((35 * Math.PI) / 180)).toFixed(2)} × 90 mm, before the gap`);
  });

  it("the inside of a slanting end differs from the mean by half the thickness times the slope", () => {
    expect(line("surface", { surface: "inside" }, { thickness: 2 })).toBe(`At most ${Number(Math.tan((35 * Math.PI) / 180).toFixed(2))} mm off the mean surface, at station 0`);
  });

  it("a wrap's stretch-out is π times the outside and its own thickness", () => {
    expect(line("purpose", { purpose: "wrap", paper: 0.5 })).toBe(`Stretch-out ${(Math.PI * 90.5).toFixed(2)} mm`);
  });
});

describe("kilograms", () => {
  it.each([[0.0123, "12 g"], [1.23456, "1.235 kg"], [123.4, "123.4 kg"]])("kilograms of %s are %s", (mass, text) => expect(kilograms(mass)).toBe(text));
});
