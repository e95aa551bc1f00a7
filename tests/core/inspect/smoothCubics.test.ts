import { describe, expect, it } from "vitest";
import { adequacy, segmentPoint, smoothCubics } from "../../../src/core/index";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const slanted = pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 45, direction: 180, height: 150 })] });
const stepped = pipeJob({ diameter: 90, length: 200, cuts: [planeCut({ angle: 45, direction: 180, height: 150 }), openingCut({ shape: "round", diameter: 40 }, { direction: 90, height: 195 })] });

for (const [name, job] of [["a slanted end", slanted], ["an end with a bite out of it", stepped]] as const) {
  const [piece] = developed(job).pieces;
  if (!piece) throw new Error("no piece");

  describe(`smoothCubics of ${name}`, () => {
    const chains = smoothCubics(piece, "top");

    it("run on without a gap and stay on the pattern", () => {
      for (const chain of chains) {
        chain.slice(1).forEach((cubic, i) => expect(cubic.from).toEqual(chain[i]?.to));
        for (const { from, to } of chain) {
          expect(from.x).toBeGreaterThanOrEqual(0);
          expect(to.x).toBeLessThanOrEqual(piece.pattern.girth + 1e-9);
        }
      }
    });

    it("go through the points that the adequacy gives of the same curve", () => {
      const { smooth } = adequacy(piece, "top", { tolerance: 0.1 });
      for (const { x, y } of smooth.flat()) {
        const misses = chains.flat().filter(({ from, to }) => from.x <= x + 1e-9 && x <= to.x + 1e-9)
          .map((cubic) => Math.abs(segmentPoint(cubic, (x - cubic.from.x) / (cubic.to.x - cubic.from.x)).y - y));
        expect(Math.min(...misses)).toBeLessThan(1e-9);
      }
    });
  });
}
