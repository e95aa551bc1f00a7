import { describe, expect, it } from "vitest";
import { elementAt, keptAt } from "../../../src/core/index";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const job = pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 35, direction: 180, height: 150 }), openingCut({ shape: "round", diameter: 40 }, { direction: 270, height: 70 })] });

for (const face of ["inside", "outside"] as const) {
  describe(`elementAt, ${face} up`, () => {
    const [piece] = developed({ ...job, development: { ...job.development, face } }).pieces;
    if (!piece) throw new Error("no piece");

    it("gives at a station what the station gives", () => {
      for (const { label: _label, mark: _mark, ...element } of piece.stations.slice(0, -1)) {
        const here = elementAt(piece, element.girth);
        expect(here.theta).toBeCloseTo(element.theta, 9);
        expect(here.top).toBeCloseTo(element.top ?? NaN, 6);
        expect(here.length).toBeCloseTo(element.length, 6);
      }
    });

    it("gives between stations what is kept there", () => {
      const girth = 0.37 * piece.pattern.girth;
      const { theta, top, bottom, openings } = elementAt(piece, girth);
      const { after } = keptAt(piece, theta);
      expect([bottom, top]).toEqual([after[0]?.from, after.at(-1)?.to]);
      expect(openings).toHaveLength(after.length - 1);
    });

    it("takes any turn", () => {
      expect(elementAt(piece, 40 + piece.pattern.girth).top).toBeCloseTo(elementAt(piece, 40).top ?? NaN, 9);
    });
  });
}
