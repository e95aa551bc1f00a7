import { describe, expect, it } from "vitest";
import { pathArea } from "../../../src/core/index";
import { board } from "../../../src/drawing/board/board";
import { METRIC } from "../../../src/drawing/figures";
import { patternAllowances } from "../../../src/drawing/pattern/patternAllowances";
import { collisions, textsOf } from "../../support/collisions";
import { developed } from "../../support/developed";
import { expectClose } from "../../support/approximate";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";
import { randomShop } from "../../support/randomShop";

const edges = { top: { kind: "flange", width: 12, slits: 20 }, bottom: { kind: "hem", width: 6 } } as const;
const shop = { seam: { kind: "grooved", width: 6, share: 1 / 3 }, edges } as const;
const cuts = [planeCut({ angle: 35, direction: 60, height: 150 }), openingCut({ shape: "round", diameter: 40 }, { direction: 270, height: 60 })];
const duct = (fabrication: object, attitude: "upright" | "lying" = "upright") => developed(pipeJob({ diameter: 120, length: 240, attitude, cuts, fabrication }));

describe("patternAllowances", () => {
  it("are none for a job that adds nothing", () => {
    expect(patternAllowances(duct({ seam: { kind: "butt", gap: 2 } }), METRIC)).toBeNull();
  });
  it("say the sum of each place in one line, both edges of the seam together", () => {
    expect(patternAllowances(duct(shop), METRIC)![0]!.sums).toEqual(["top: flange 12", "bottom: hem 6", "seam: groove 3 × 6 = 18 (6 + 12)"]);
  });
  it("say a seam whose width is all on one edge as one sum", () => {
    expect(patternAllowances(duct({ seam: { kind: "lap", width: 10, share: 1 } }), METRIC)![0]!.sums).toEqual(["seam: lap 10"]);
  });
  it("stand on the pattern as it is described also for the opposite hand", () => {
    const [described, opposite] = [shop, { ...shop, hand: "opposite" }].map((choices) => patternAllowances(duct(choices), METRIC)![0]!);
    expect(opposite!.contours).toEqual(described!.contours);
  });
});

describe("board with allowances", () => {
  it("shows the cut lines wide and the sums, the stretch-out staying what it is", () => {
    const development = duct(shop);
    const [added] = patternAllowances(development, METRIC)!;
    const { items, scale } = board(development, { width: 320, height: 200, allowances: [added!] });
    const wide = items.flatMap((item) => (item.kind === "path" && item.pen === "outline" ? item.segments : []));
    expectClose(pathArea(wide) / scale ** 2, pathArea(added!.contours.find(({ kind }) => kind === "outline")!.segments), 1e-6 * 240 * 400);
    expect(textsOf(items).map(({ text }) => text)).toEqual(expect.arrayContaining([...added!.sums, "stretch-out 376.99"]));
  });
  it("lets no figure touch another or any line, upright and lying, in any window", () => {
    for (const attitude of ["upright", "lying"] as const) {
      const development = duct(shop, attitude);
      const allowances = patternAllowances(development, METRIC);
      for (const [width, height] of [[320, 200], [160, 260]] as const) expect(collisions(board(development, { width, height, allowances }).items), attitude).toEqual([]);
    }
  });
  it("lets no figure touch another or any line on random pipes", () => {
    for (const { name, development } of randomShop(0, 15)) {
      expect(collisions(board(development, { width: 320, height: 200, allowances: patternAllowances(development, METRIC) }).items), name).toEqual([]);
    }
  });
});
