import { describe, expect, it } from "vitest";
import { adequacy, smoothGap } from "../../../src/core/index";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const job = pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 55, direction: 180, height: 150 }), openingCut({ shape: "round", diameter: 40 }, { direction: 90, height: 195 })] });

describe("smoothGap", () => {
  const [piece] = developed(job).pieces;
  if (!piece) throw new Error("no piece");

  it("is as wide as the adequacy says, from the place it says", () => {
    for (const end of ["top", "bottom"] as const) {
      const found = adequacy(piece, end, { tolerance: 0.1 });
      const gap = smoothGap(piece, end, found);
      if (!gap) throw new Error("no gap");
      expect(gap.edge).toEqual({ x: found.at.girth, y: found.at.z });
      expect(Math.hypot(gap.edge.x - gap.curve.x, gap.edge.y - gap.curve.y)).toBeCloseTo(found.deviation, 4);
    }
  });
});
