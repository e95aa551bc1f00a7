import { describe, expect, it } from "vitest";
import { develop } from "../../../src/core/develop";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, type Seam } from "../../support/pipeJob";

const mitre = planeCut({ angle: 30, height: 120, direction: 70 });
const seamAt = (seam: Seam): number => (developedPipe(pipeJob({ diameter: 100, length: 250, seam, cuts: [mitre] })).pattern.seam * 180) / Math.PI;

describe("pipePiece", () => {
  for (const [at, degrees] of [["front", 0], ["right", 90], ["back", 180], ["left", 270], ["shortest", 250], ["longest", 70]] as const) {
    it(`with its seam at the ${at} has it at ${degrees}°`, () => expectClose(seamAt({ at }), degrees, 1e-9));
  }
  it("with its seam at -30° has it at 330°", () => expectClose(seamAt({ at: "angle", angle: -30 }), 330, 1e-9));
  it("does not take an element through an opening for short", () => {
    const cuts = [mitre, openingCut({ shape: "round", diameter: 60 }, { height: 50, direction: 70 })];
    const { pattern } = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "shortest" }, cuts }));
    expectClose((pattern.seam * 180) / Math.PI, 250, 1e-9);
  });
  it("of a pipe with nothing left is a problem", () => {
    const outcome = develop(pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ height: -10 })] }));
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(["nothing-left"]);
  });
});
