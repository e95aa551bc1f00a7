import { describe, it } from "vitest";
import { keptAt, type Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { CASES, onEach, randomCases, type LawCase } from "../support/lawCase";
import { loopArea } from "../support/loopSampling";
import { randomSource } from "../support/randomSource";

/** A random pipe and the same pipe with its seam at some other angle. */
interface Pair extends LawCase { readonly moved: Piece }

const pairs: readonly Pair[] = randomCases(CASES / 2).map((one, index) => {
  const angle = randomSource(index).between(-360, 360);
  return { ...one, moved: developedPipe({ ...one.job, development: { ...one.job.development, seam: { at: "angle", angle } } }) };
});

const flatArea = (piece: Piece): number => piece.pattern.loops.reduce((sum, loop) => sum + loopArea(loop), 0);

describe("moving the seam of a random cut pipe", () => {
  it("leaves the area, to 1e-9 of the whole pipe's", () => onEach(pairs, ({ job, piece, moved }) => {
    expectClose(moved.trimmed.area, piece.trimmed.area, 1e-9 * piece.pattern.girth * job.part.length);
  }));
  it("leaves the flat area but for what an edge within 0.005 mm can take or give", () => onEach(pairs, ({ piece, moved }) => {
    expectClose(flatArea(moved), flatArea(piece), 0.01 * (piece.pattern.proof.edgeLengthSurface + 1));
  }));
  it("leaves the length of the edges in space, to 1e-6", () => onEach(pairs, ({ piece, moved }) => {
    const length = piece.pattern.proof.edgeLengthSurface;
    expectClose(moved.pattern.proof.edgeLengthSurface, length, 1e-6 * length);
  }));
  it("leaves the girth", () => onEach(pairs, ({ piece, moved }) => expectClose(moved.pattern.girth, piece.pattern.girth, 0)));
  it("leaves the number of pieces", () => onEach(pairs, ({ piece, moved }) => expectClose(moved.trimmed.components, piece.trimmed.components, 0)));
  it("leaves the ordinates of every element, to 1e-9 of the size", () => onEach(pairs, ({ job, piece, moved }) => {
    const source = randomSource(5);
    for (let trial = 0; trial < 10; trial += 1) {
      const theta = source.between(0, 2 * Math.PI);
      const ends = (of: Piece): number[] => keptAt(of, theta).after.flatMap(({ from, to }) => [from, to]);
      expectAllClose(ends(moved), ends(piece), 1e-9 * Math.max(job.part.length, 2 * piece.form.radius), `theta ${theta}`);
    }
  }));
});
