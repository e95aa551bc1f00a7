import { describe, it } from "vitest";
import { keptAt } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { edgeLength, isCut } from "../support/edgeLength";
import { onRandomPipes, type LawCase } from "../support/lawCase";
import { loopArea } from "../support/loopSampling";
import { randomSource } from "../support/randomSource";

/** The same pipe with its seam somewhere else. */
function moved({ job, piece }: LawCase): { before: typeof piece; after: typeof piece } {
  const angle = randomSource(Math.round(job.part.length * 1000)).between(-360, 360);
  return { before: piece, after: developedPipe({ ...job, development: { ...job.development, seam: { at: "angle", angle } } }) };
}

describe("moving the seam of a random cut pipe", () => {
  it("leaves the area", () => onRandomPipes((one) => {
    const { before, after } = moved(one);
    expectClose(after.trimmed.area, before.trimmed.area, 1e-9 * one.piece.pattern.girth * one.job.part.length);
  }));
  it("leaves the flat area but for what an edge within 0.005 mm can take or give", () => onRandomPipes((one) => {
    const flat = (piece: typeof one.piece): number => piece.pattern.loops.reduce((sum, loop) => sum + loopArea(loop), 0);
    const { before, after } = moved(one);
    expectClose(flat(after), flat(before), 0.01 * (edgeLength(before, () => true, 20) + 1));
  }));
  it("leaves the length of the cut edges", () => onRandomPipes((one) => {
    const { before, after } = moved(one);
    const length = edgeLength(before, isCut, 200);
    expectClose(edgeLength(after, isCut, 200), length, 1e-6 * length);
  }));
  it("leaves the girth", () => onRandomPipes((one) => {
    const { before, after } = moved(one);
    expectClose(after.pattern.girth, before.pattern.girth, 0);
  }));
  it("leaves the number of pieces", () => onRandomPipes((one) => {
    const { before, after } = moved(one);
    expectClose(after.trimmed.components, before.trimmed.components, 0);
  }));
  it("leaves the ordinates of every element", () => onRandomPipes((one) => {
    const { before, after } = moved(one);
    const source = randomSource(5);
    for (let trial = 0; trial < 10; trial += 1) {
      const theta = source.between(0, 2 * Math.PI);
      const ends = (piece: typeof before): number[] => keptAt(piece, theta).after.flatMap(({ from, to }) => [from, to]);
      expectAllClose(ends(after), ends(before), 1e-9 * Math.max(one.job.part.length, one.job.part.diameter), `theta ${theta}`);
    }
  }));
});
