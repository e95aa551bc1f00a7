import { beforeAll, describe, expect, it } from "vitest";
import { develop, type Piece } from "../../src/core/index";
import { cutPipes } from "./cutPipes";
import { loadKernel, type Kernel } from "./kernel";
import { lateral } from "./lateral";
import { pipeSolid, surfaceRadius } from "./pipeSolid";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const relative = (value: number, wanted: number) => Math.abs(value - wanted) / Math.abs(wanted);

/** mm. */
const chordTolerance = 1e-4;

/** Relative errors allowed. */
const tolerance = {
  /** Both sides integrate; the worst seen is 3e-10. */
  surfaceArea: 1e-9,
  /** Where a cut is not flat, the kernel's edges are splines near the true curve; the worst seen is 3e-8. */
  surfaceEdges: 1e-7,
  /** What cubics within the chord tolerance may lose; the worst seen is 1.1e-7. */
  flat: 1e-6,
};

describe("develop against the B-rep kernel", () => {
  for (const [name, job] of Object.entries(cutPipes)) {
    it(`gives the lateral area and the edge lengths of ${name}`, () => {
      const outcome = develop(job, { chordTolerance });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      const measured = lateral(kernel.oc, pipeSolid(kernel, job), surfaceRadius(job.part));
      const proofs = outcome.development.pieces.map(({ pattern }: Piece) => pattern.proof);
      expect(relative(sum(proofs.map(({ areaFlat }) => areaFlat)), measured.area)).toBeLessThan(tolerance.flat);
      expect(relative(sum(proofs.map(({ areaSurface }) => areaSurface)), measured.area)).toBeLessThan(tolerance.surfaceArea);
      expect(relative(sum(proofs.map(({ edgeLengthFlat }) => edgeLengthFlat)), sum(measured.edges))).toBeLessThan(tolerance.flat);
      expect(relative(sum(proofs.map(({ edgeLengthSurface }) => edgeLengthSurface)), sum(measured.edges))).toBeLessThan(tolerance.surfaceEdges);
    });
  }
});
