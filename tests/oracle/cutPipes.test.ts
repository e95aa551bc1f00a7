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

/** mm; well below the tolerance under test, so that what is compared is geometry and not fitting. */
const chordTolerance = 1e-4;

/** Relative to the whole. The kernel's own intersection curves are splines within 1e-7 of the model's size of the true curve. */
const tolerance = 1e-6;

describe("develop against the B-rep kernel", () => {
  for (const [name, job] of Object.entries(cutPipes)) {
    it(`gives the lateral area and the edge lengths of ${name}`, () => {
      const outcome = develop(job, { chordTolerance });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      const measured = lateral(kernel.oc, pipeSolid(kernel, job), surfaceRadius(job.part));
      const proofs = outcome.development.pieces.map(({ pattern }: Piece) => pattern.proof);
      expect(relative(sum(proofs.map(({ areaFlat }) => areaFlat)), measured.area)).toBeLessThan(tolerance);
      expect(relative(sum(proofs.map(({ areaSurface }) => areaSurface)), measured.area)).toBeLessThan(tolerance);
      expect(relative(sum(proofs.map(({ edgeLengthFlat }) => edgeLengthFlat)), sum(measured.edges))).toBeLessThan(tolerance);
      expect(relative(sum(proofs.map(({ edgeLengthSurface }) => edgeLengthSurface)), sum(measured.edges))).toBeLessThan(tolerance);
    });
  }
});
