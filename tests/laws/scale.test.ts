import { describe, it } from "vitest";
import type { Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { edgeLength, isCut } from "../support/edgeLength";
import { onRandomPipes, type LawCase } from "../support/lawCase";
import { loopArea } from "../support/loopSampling";
import { scaledJob } from "../support/scaledJob";

const FACTOR = 2.6;

/** The pipe, and one 2.6 times as large followed 2.6 times as loosely; the seam at an angle. */
function both({ job }: LawCase): [Piece, Piece] {
  const fixed = { ...job, development: { ...job.development, seam: { at: "angle", angle: 41.7 } as const } };
  return [developedPipe(fixed, { chordTolerance: 0.005 }), developedPipe(scaledJob(fixed, FACTOR), { chordTolerance: 0.005 * FACTOR })];
}

describe("a random cut pipe made 2.6 times as large", () => {
  it("has 2.6 times the girth", () => onRandomPipes((one) => {
    const [a, b] = both(one);
    expectClose(b.pattern.girth, FACTOR * a.pattern.girth, 1e-12 * b.pattern.girth);
  }));
  it("has 2.6² times the area", () => onRandomPipes((one) => {
    const [a, b] = both(one);
    expectClose(b.trimmed.area, FACTOR ** 2 * a.trimmed.area, 1e-9 * b.pattern.girth * b.form.length);
  }));
  it("has 2.6² times the flat area", () => onRandomPipes((one) => {
    const flat = (piece: Piece): number => piece.pattern.loops.reduce((sum, loop) => sum + loopArea(loop), 0);
    const [a, b] = both(one);
    expectClose(flat(b), FACTOR ** 2 * flat(a), 0.01 * FACTOR * (edgeLength(b, () => true, 20) + 1));
  }));
  it("has cut edges 2.6 times as long", () => onRandomPipes((one) => {
    const [a, b] = both(one);
    const length = edgeLength(b, isCut, 200);
    expectClose(length, FACTOR * edgeLength(a, isCut, 200), 1e-6 * length);
  }));
  it("has stations 2.6 times as long", () => onRandomPipes((one) => {
    const [a, b] = both(one);
    const lengths = (piece: Piece): number[] => piece.stations.filter((station) => station.mark === "even").map((station) => station.length);
    expectAllClose(lengths(b), lengths(a).map((length) => FACTOR * length), 1e-5);
  }));
});
