import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { completeIntegrals } from "../../support/elliptic";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";
import { proofOf } from "../../../src/core/unroll/proof";

const mitre = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ angle: 45, height: 120 })] }));
const { proof } = mitre.pattern;
const ends = 2 * Math.PI * 50;

describe("proofOf", () => {
  it("has the area of a mitre on the surface", () => expectClose(proof.areaSurface, ends * 120, 1e-5));
  it("has nearly the same area in the plane", () => expectClose(proof.areaFlat, proof.areaSurface, ends * 0.005));
  // CYL-08: 4 √2 r E(1/2).
  it("has the edges of a mitre in space: an ellipse and the square end", () => {
    expectClose(proof.edgeLengthSurface, ends + 4 * Math.SQRT2 * 50 * completeIntegrals(0.5).second, 1e-6);
  });
  it("has nearly the same length in the plane", () => expectClose(proof.edgeLengthFlat, proof.edgeLengthSurface, 0.01));
  // TEE-03 with the seam elsewhere: two half ellipses at 45°.
  it("has the edge of an opening as wide as the pipe: half a 45° ellipse twice", () => {
    const { edgeLengthSurface } = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "back" }, cuts: [openingCut({ shape: "round", diameter: 100 }, { height: 120 })] })).pattern.proof;
    expectClose(edgeLengthSurface, 2 * ends + 4 * Math.SQRT2 * 50 * completeIntegrals(0.5).second, 1e-5);
  });
  it("counts the upright of a step", () => {
    const { edgeLengthSurface } = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "left" }, cuts: [shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 25 })] })).pattern.proof;
    expectClose(edgeLengthSurface, 2 * ends + 100, 1e-6);
  });
  it("closes without a gap", () => expect(proof.closingError).toBe(0));
  it("rolls back within the tolerance", () => expect(proof.rollBackError).toBeLessThanOrEqual(0.005));
  it("has the girth of the circle", () => expectClose(proof.girth, proof.girthExact, 0));
  it("shows segments that leave the edge: an edge drawn as its chord", () => {
    const { form, cutters, trimmed, pattern } = mitre;
    const edge = trimmed.edges.find(({ owner }) => owner.kind === "cut")!;
    const chord = { kind: "line", from: { x: 0, y: edge.z[0] }, to: { x: form.girth, y: edge.z[1] } } as const;
    const wrong = proofOf(form, cutters, trimmed, pattern.seam, [[{ edge, segments: [chord] }]]);
    expect(wrong.rollBackError).toBeGreaterThan(10);
  });
  it("shows a gap between segments", () => {
    const { form, cutters, trimmed, pattern } = mitre;
    const [edge] = trimmed.edges;
    const gap = [{ kind: "line", from: { x: 0, y: 0 }, to: { x: 1, y: 0 } }, { kind: "line", from: { x: 1, y: 0.5 }, to: { x: 0, y: 0 } }] as const;
    expect(proofOf(form, cutters, trimmed, pattern.seam, [[{ edge: { ...edge!, face: null }, segments: gap }]]).closingError).toBe(0.5);
  });
});
