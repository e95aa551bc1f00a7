import { describe, it } from "vitest";
import type { Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { CASES, onEach, randomPieces } from "../support/lawCase";
import { loopArea } from "../support/loopSampling";
import type { Job } from "../support/pipeJob";
import { scaledJob } from "../support/scaledJob";

const FACTOR = 2.6;

/** A random pipe with its seam at an angle, and one 2.6 times as large followed 2.6 times as loosely. */
interface Pair { readonly name: string; readonly job: Job; readonly small: Piece; readonly large: Piece }

const pairs: readonly Pair[] = randomPieces(CASES / 2, 41.7).map(({ name, job, piece }) => (
  { name, job, small: piece, large: developedPipe(scaledJob(job, FACTOR), { chordTolerance: 0.005 * FACTOR }) }
));

const flatArea = (piece: Piece): number => piece.pattern.loops.reduce((sum, loop) => sum + loopArea(loop), 0);

describe("a random cut pipe made 2.6 times as large", () => {
  it("has 2.6 times the girth, to 1e-12", () => onEach(pairs, ({ small, large }) => expectClose(large.pattern.girth, FACTOR * small.pattern.girth, 1e-12 * large.pattern.girth)));
  it("has 2.6² times the area, to 1e-9 of the whole pipe's", () => onEach(pairs, ({ small, large }) => {
    expectClose(large.trimmed.area, FACTOR ** 2 * small.trimmed.area, 1e-9 * large.pattern.girth * large.form.length);
  }));
  it("has 2.6² times the flat area but for what an edge within its tolerance can take or give", () => onEach(pairs, ({ small, large }) => {
    expectClose(flatArea(large), FACTOR ** 2 * flatArea(small), 0.01 * FACTOR * (large.pattern.proof.edgeLengthSurface + 1));
  }));
  it("has edges 2.6 times as long, to 1e-8", () => onEach(pairs, ({ small, large }) => {
    const length = large.pattern.proof.edgeLengthSurface;
    expectClose(length, FACTOR * small.pattern.proof.edgeLengthSurface, 1e-8 * length);
  }));
  it("has stations 2.6 times as long", () => onEach(pairs, ({ small, large }) => {
    const lengths = (piece: Piece): number[] => piece.stations.filter((station) => station.mark === "even").map((station) => station.length);
    expectAllClose(lengths(large), lengths(small).map((length) => FACTOR * length), 1e-5);
  }));
});
