import { describe, it } from "vitest";
import type { Piece } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
import { developedPipe } from "../support/developed";
import { CASES, onEach, randomPieces } from "../support/lawCase";
import { distanceTo, finePoints, loopArea } from "../support/loopSampling";
import { mirroredJob } from "../support/mirroredJob";
import type { Job } from "../support/pipeJob";

/** A random pipe with its seam at an angle (which of two equally short elements is taken may differ in the mirror), with its other face up, and built as in the mirror. */
interface Trio { readonly name: string; readonly job: Job; readonly piece: Piece; readonly other: Piece; readonly mirrored: Piece }

const trios: readonly Trio[] = randomPieces(CASES / 2, 41.7).map(({ name, job, piece }) => {
  const face = job.development.face === "inside" ? "outside" : "inside";
  const other = developedPipe({ ...job, development: { ...job.development, face } });
  return { name, job, piece, other, mirrored: developedPipe(mirroredJob(job)) };
});

const flatArea = (piece: Piece): number => piece.pattern.loops.reduce((sum, loop) => sum + loopArea(loop), 0);

describe("turning the other face of a random cut pipe up", () => {
  it("turns the pattern over: each edge lies where the mirror shows it, within twice 0.005 mm", () => onEach(trios, ({ piece, other }) => {
    const runs = piece.pattern.loops.map((loop) => finePoints(loop, 1e-3));
    for (const { x, y } of other.pattern.loops.flatMap((loop) => loop.segments.map((segment) => segment.from))) {
      const gap = distanceTo(runs, { x: other.pattern.girth - x, y });
      if (!(gap <= 0.012)) throw new Error(`${x}, ${y} lies ${gap} mm from the mirrored edge`);
    }
  }));
  it("leaves the flat area but for what an edge within 0.005 mm can take or give", () => onEach(trios, ({ piece, other }) => {
    expectClose(flatArea(other), flatArea(piece), 0.01 * (piece.pattern.proof.edgeLengthSurface + 1));
  }));
  it("leaves the length of the edges in space, to 1e-6", () => onEach(trios, ({ piece, other }) => {
    const length = piece.pattern.proof.edgeLengthSurface;
    expectClose(other.pattern.proof.edgeLengthSurface, length, 1e-6 * length);
  }));
});

describe("a random cut pipe built as in the mirror, other face up", () => {
  it("has the same station table", () => onEach(trios, ({ piece, mirrored }) => {
    const table = ({ stations }: Piece): number[] => stations.filter((station) => station.mark === "even" || station.mark === "closing").flatMap((station) => [station.girth, station.length]);
    expectAllClose(table(mirrored), table(piece), 1e-5);
  }));
  it("has the same area, to 1e-9 of the whole pipe's", () => onEach(trios, ({ job, piece, mirrored }) => {
    expectClose(mirrored.trimmed.area, piece.trimmed.area, 1e-9 * piece.pattern.girth * job.part.length);
  }));
  it("has edges as long in space, to 1e-6", () => onEach(trios, ({ piece, mirrored }) => {
    const length = piece.pattern.proof.edgeLengthSurface;
    expectClose(mirrored.pattern.proof.edgeLengthSurface, length, 1e-6 * length);
  }));
});
