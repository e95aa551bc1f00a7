// Thickness, edges, seams, bends, gauges and densities from published figures; each source beside its check. Inches are 25.4 mm.
import { describe, expect, it } from "vitest";
import { bendAllowance, bendDeduction, DENSITIES, dinKFactor, fabricate, GAUGES, gaugeThickness, type FabricationChoices, type GaugeTable } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developed, developedPipe } from "../support/developed";
import { pipeJob } from "../support/pipeJob";

const INCH = 25.4;

describe("the girth of rolled sheet", () => {
  // THK-01: Cyclopedia of Drawing (1906), sheet-metal part, boiler-shell paragraph: 3.1416 (d + t) and 3.1416 (D - t).
  for (const [basis, mean] of [["inside", 1219.2 + 9.5], ["outside", 1219.2 - 9.5]] as const) {
    it(`is π × (diameter ${basis === "inside" ? "+" : "-"} thickness) from the ${basis}`, () => {
      const { pattern } = developedPipe(pipeJob({ diameter: 1219.2, basis, thickness: 9.5, length: 100 }));
      expectClose(pattern.girth, Math.PI * mean, 1e-9);
    });
  }

  // THK-02: Eldred Sheet Metal, "Formulas for metal fabrication": OD π - 3t gives 73.9 in for 24 in × 1/2 in; π × 23.5 is 73.8274.
  it("is within 0.1 in of the rule OD π - 3 t for 24 in of half-inch plate", () => {
    const { pattern } = developedPipe(pipeJob({ diameter: 24 * INCH, basis: "outside", thickness: 0.5 * INCH, length: 100 }));
    expectClose(pattern.girth / INCH, 73.8274, 5e-5);
    expectClose(pattern.girth / INCH, 73.9, 0.1);
  });

  // THK-03: Longfield, Sheet Metal Drafting, p. 54: the small end is the big end less 7 t, so that it slips in. π (D_in - t) is
  // less than the girth of its mate by 2 π t = 6.28 t when it just fits: the rule leaves some play.
  it("of a pipe that just slips into another is 2 π t less, which the rule of 7 t exceeds", () => {
    const outer = developedPipe(pipeJob({ diameter: 200, basis: "outside", thickness: 1, length: 100 })).pattern.girth;
    const inner = developedPipe(pipeJob({ diameter: 198, basis: "outside", thickness: 1, length: 100 })).pattern.girth;
    expectClose(outer - inner, 2 * Math.PI, 1e-9);
    expect(outer - inner).toBeLessThan(7);
  });

  // Common practice: π × (measured outside diameter + paper thickness).
  it("of a template to wrap is π × (outside diameter + paper)", () => {
    const { pattern } = developedPipe(pipeJob({ diameter: 114.3, basis: "outside", thickness: 6.02, length: 100, fabrication: { purpose: "wrap", paper: 0.2 } }));
    expectClose(pattern.girth, Math.PI * 114.5, 1e-9);
  });
});

/** Width of what is added at a place of a plain pipe of 0.8 mm sheet, mm. */
function added(fabrication: Partial<FabricationChoices>): Record<string, number> {
  const { pieces } = fabricate(developed(pipeJob({ diameter: 200, length: 300, thickness: 0.8, fabrication })));
  return Object.fromEntries(pieces[0]!.allowances.map(({ place, width }) => [place, width]));
}

describe("what is added", () => {
  // EDG-01: NAVEDTRA 14251, chapter 2, "Edges", figure 2-56: 2 1/2 × d, for wire of 1/8 in 5/16 in.
  it("for a wire of 1/8 in is 5/16 in", () => expectClose(added({ edges: { top: { kind: "wired", wire: INCH / 8, thickness: false }, bottom: { kind: "none" } } })["top"]! / INCH, 5 / 16, 1e-12));
  // EDG-01, variant 2.5 d + t of a trade question bank.
  it("for a wire, with the sheet asked for, is one thickness more", () =>
    expectClose(added({ edges: { top: { kind: "wired", wire: INCH / 8, thickness: true }, bottom: { kind: "none" } } })["top"]!, (5 / 16) * INCH + 0.8, 1e-12));
  // EDG-02: NAVEDTRA 14251, chapter 2, figures 2-54 and 2-55: W and 2 W.
  it("for a single hem is W, for a double one 2 W", () =>
    expect(added({ edges: { top: { kind: "hem", width: 6 }, bottom: { kind: "double-hem", width: 6 } } })).toEqual({ top: 6, bottom: 12 }));
  // EDG-03: M. Spencer, "Lock seam" notes: three times the width; 1/4 in gives 3/4 in.
  it("for a grooved seam is 3 W in all", () => {
    const widths = added({ seam: { kind: "grooved", width: INCH / 4, share: 1 / 3 } });
    expectClose((widths["seam-start"]! + widths["seam-end"]!) / INCH, 3 / 4, 1e-12);
    expectClose(widths["seam-start"]!, INCH / 4, 1e-12);
  });
});

describe("the bend allowance", () => {
  // BND-01 and 02: NAVEDTRA 14119, p. 13-43, examples 1 and 2: the mean line, K = 0.5.
  it("of half-inch plate, inside radius 3 in, at 90° is 5.10 in", () => expectClose(bendAllowance({ insideRadius: 3, thickness: 0.5, angle: Math.PI / 2 }, 0.5), 5.1, 0.01));
  it("of half-inch stock, inside radius 1 in, at 180° is 3.925 in", () => expectClose(bendAllowance({ insideRadius: 1, thickness: 0.5, angle: Math.PI }, 0.5), 3.925, 0.005));
  // BND-03: tpub air/13-19, quoting NA 01-1A-1: (0.0173 R + 0.0078 T) N, K = 0.0078 / 0.01743 = 0.447.
  it("with K = 0.447 is the empirical (0.01743 R + 0.0078 T) N", () =>
    expectClose(bendAllowance({ insideRadius: 0.25, thickness: 0.064, angle: Math.PI / 2 }, 0.447), (0.01743 * 0.25 + 0.0078 * 0.064) * 90, 1e-3));
  // BND-04: SheetMetalWorkBook, "90 Degree Bends": T .050, R .032: allowance .085, deduction .079.
  it("of .050 in sheet, radius .032 in, at 90° is .085 in and takes off .079 in", () => {
    const bend = { insideRadius: 0.032, thickness: 0.05, angle: Math.PI / 2 };
    expectClose(bendAllowance(bend, 0.447), 0.085, 5e-4);
    expectClose(bendDeduction(bend, 0.447), 0.079, 5e-4);
  });
});

describe("bends of a strip", () => {
  // BND-04, second part: the three bends of .740/.420/1.050/1.000 measured outside come to 2.973 in flat.
  it("of .740, .420, 1.050 and 1.000 in outside leave 2.973 in flat", () => {
    expectClose(0.74 + 0.42 + 1.05 + 1 - 3 * bendDeduction({ insideRadius: 0.032, thickness: 0.05, angle: Math.PI / 2 }, 0.447), 2.973, 0.002);
  });
  // BND-05: FAA-H-8083-31, vol. 1, chapter 4: T .040, R .16: set-back .2, flats .8, 1.6, .8 of a channel of 1.00 by 2.00 by 1.00 in.
  it("of a channel are set back by .2 in, half of what allowance and deduction are together", () => {
    const bend = { insideRadius: 0.16, thickness: 0.04, angle: Math.PI / 2 };
    const setBack = (bendAllowance(bend, 0.447) + bendDeduction(bend, 0.447)) / 2;
    expectAllClose([setBack, 1 - setBack, 2 - 2 * setBack], [0.2, 0.8, 1.6], 1e-12);
  });
  // BND-08: Austrian school text, Westermann 978-3-7100-2443-6, p. 206: 0.5 r + 1.5 t a right angle, r = t = 1, legs 50/40/30 give 116; DIN says 1.92 for the rule's 2.
  it("of legs 50, 40 and 30 with r = t = 1 come to 116 by the rule, to 0.2 of that by DIN 6935", () => {
    expectClose(50 + 40 + 30 - 2 * bendDeduction({ insideRadius: 1, thickness: 1, angle: Math.PI / 2 }, dinKFactor(1, 1)), 116, 0.2);
  });
});

describe("DIN 6935", () => {
  // BND-06: Tabellenbuch Metall (Europa), "Zuschnittermittlung": opening 60°, r = 6, s = 5: k = 0.689; v = 5.77 with k = 0.7, 5.823 with the exact k.
  it("has k = 0.689 for r = 6 on s = 5", () => expectClose(2 * dinKFactor(6, 5), 0.689, 1e-3));
  it("takes 5.77 off legs of 16 and 21 with k = 0.7, which leaves 31.23", () => {
    const off = bendDeduction({ insideRadius: 6, thickness: 5, angle: (2 * Math.PI) / 3 }, 0.35);
    expectClose(off, 5.77, 0.01);
    expectClose(16 + 21 - off, 31.23, 0.01);
  });
  it("takes 5.823 off with the exact k", () => expectClose(bendDeduction({ insideRadius: 6, thickness: 5, angle: (2 * Math.PI) / 3 }, dinKFactor(6, 5)), 5.823, 0.001));
  // BND-07: the same formula at 90°.
  for (const [radius, thickness, off] of [[1, 1, 1.919], [2, 2, 3.837], [1.6, 2, 3.742], [3, 3, 5.756]] as const) {
    it(`takes ${off} off a right angle of r = ${radius} on s = ${thickness}`, () =>
      expectClose(bendDeduction({ insideRadius: radius, thickness, angle: Math.PI / 2 }, dinKFactor(radius, thickness)), off, 0.002));
  }
});

describe("gauges", () => {
  const rows: readonly (readonly [GaugeTable, string, readonly (readonly [string, number])[], number])[] = [
    // GAU-01: 15 U.S.C. 206.
    ["us-standard", "15 U.S.C. 206", [["10", 0.140625], ["12", 0.109375], ["14", 0.078125], ["16", 0.0625], ["18", 0.05], ["20", 0.0375]], 0],
    // GAU-02: published charts, 41.82 lb a square foot to the inch.
    ["manufacturers-standard", "published charts", [["10", 0.1345], ["16", 0.0598], ["18", 0.0478], ["20", 0.0359], ["22", 0.0299], ["24", 0.0239]], 1e-12],
    // GAU-03: Haswell's table for Brown & Sharpe, "Metal Worker Assistant".
    ["brown-and-sharpe", "Haswell", [["0", 0.32486], ["1", 0.2893], ["4", 0.20431], ["8", 0.12849], ["10", 0.10189], ["12", 0.080808], ["14", 0.064084]], 1e-5],
    // GAU-04: Order in Council, 10 July 1914, table at sizes.com.
    ["birmingham-sheet", "Order in Council 1914", [["10", 0.125], ["12", 0.0991], ["14", 0.0785], ["16", 0.0625], ["18", 0.0495], ["20", 0.0392]], 0],
    // GAU-05 and 06: Building Construction, vol. 3, Holtzapffel's table.
    ["birmingham-wire", "Holtzapffel", [["10", 0.134], ["12", 0.109], ["14", 0.083], ["16", 0.065], ["18", 0.049], ["20", 0.035]], 0],
    ["imperial-wire", "Holtzapffel", [["10", 0.128], ["12", 0.104], ["14", 0.08], ["16", 0.064], ["18", 0.048], ["20", 0.036]], 0],
  ];
  for (const [table, source, gauges, tolerance] of rows) {
    it(`of the table ${GAUGES[table].name} are those of ${source}`, () => {
      for (const [gauge, inches] of gauges) expectClose(gaugeThickness(table, gauge)! / INCH, inches, tolerance + 1e-15, gauge);
    });
  }
  // GAU-01, mm column: .0625 in = 1.5875, 20 gauge = .9525; GAU-02: the two 16 gauges differ.
  it("16 of the US Standard is 1.5875 mm, of the Manufacturers' Standard 1.519 mm", () => {
    expectClose(gaugeThickness("us-standard", "16")!, 1.5875, 1e-12);
    expectClose(gaugeThickness("manufacturers-standard", "16")!, 1.5189, 1e-4);
  });
});

describe("densities", () => {
  // DEN-01: simetric.co.uk, table of metals.
  for (const [material, least, most] of [["steel", 7850, 7850], ["stainless", 7480, 8000], ["copper", 8930, 8930], ["brass", 8430, 8730], ["zinc", 7135, 7135], ["lead", 11340, 11340], ["aluminium", 2700, 2750]] as const) {
    it(`of ${material} is ${least === most ? least : `${least} to ${most}`} kg/m³`, () => {
      expect(DENSITIES[material]).toBeGreaterThanOrEqual(least);
      expect(DENSITIES[material]).toBeLessThanOrEqual(most);
    });
  }
});
