import { describe, it } from "vitest";
import type { Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { edgeLength, isCut } from "../support/edgeLength";
import { onRandomPipes, type LawCase } from "../support/lawCase";
import { distanceTo, finePoints, loopArea } from "../support/loopSampling";
import { mirroredJob } from "../support/mirroredJob";
import type { Job } from "../support/pipeJob";

/** The pipe with its seam at an angle (which of two equally short elements is taken may differ in the mirror). */
function fixed({ job }: LawCase): Job {
  return { ...job, development: { ...job.development, seam: { at: "angle", angle: 41.7 } } };
}

function otherFace(job: Job): Job {
  return { ...job, development: { ...job.development, face: job.development.face === "inside" ? "outside" : "inside" } };
}

const flatArea = (piece: Piece): number => piece.pattern.loops.reduce((sum, loop) => sum + loopArea(loop), 0);

describe("turning the other face of a random cut pipe up", () => {
  it("turns the pattern over: each edge lies where the mirror shows it, within twice 0.005 mm", () => onRandomPipes((one) => {
    const [a, b] = [developedPipe(fixed(one)), developedPipe(otherFace(fixed(one)))];
    const runs = a.pattern.loops.map((loop) => finePoints(loop, 5e-4));
    for (const { x, y } of b.pattern.loops.flatMap((loop) => loop.segments.map((segment) => segment.from))) {
      const gap = distanceTo(runs, { x: b.pattern.girth - x, y });
      if (!(gap <= 0.011)) throw new Error(`${x}, ${y} lies ${gap} mm from the mirrored edge`);
    }
  }));
  it("leaves the flat area", () => onRandomPipes((one) => {
    const [a, b] = [developedPipe(fixed(one)), developedPipe(otherFace(fixed(one)))];
    expectClose(flatArea(a), flatArea(b), 0.01 * (edgeLength(a, () => true, 20) + 1));
  }));
});

describe("a random cut pipe built as in the mirror, other face up", () => {
  it("has the same station table", () => onRandomPipes((one) => {
    const [a, b] = [developedPipe(fixed(one)), developedPipe(mirroredJob(fixed(one)))];
    const table = (piece: Piece): number[] => piece.stations.filter((station) => station.mark !== "critical").flatMap((station) => [station.girth, station.length]);
    expectAllClose(table(b), table(a), 1e-5);
  }));
  it("has the same area", () => onRandomPipes((one) => {
    const [a, b] = [developedPipe(fixed(one)), developedPipe(mirroredJob(fixed(one)))];
    expectClose(b.trimmed.area, a.trimmed.area, 1e-9 * one.piece.pattern.girth * one.job.part.length);
  }));
  it("has cut edges of the same length", () => onRandomPipes((one) => {
    const [a, b] = [developedPipe(fixed(one)), developedPipe(mirroredJob(fixed(one)))];
    const length = edgeLength(a, isCut, 200);
    expectClose(edgeLength(b, isCut, 200), length, 1e-6 * length);
  }));
});
