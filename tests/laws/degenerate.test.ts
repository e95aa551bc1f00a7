import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/index";
import { degeneratePipes } from "../support/degeneratePipes";
import { onCase, refusalExpected, type LawCase } from "../support/lawCase";
import { checkClosed, checkInsideBlank, checkOrientation, checkSeamEdges, checkSimple } from "./checkLoops";
import { checkPieceCount, checkPiecesSaid } from "./checkPieces";
import { checkOrdinates, checkSpacing, checkSummary } from "./checkStations";
import { checkEdgeLength, checkFlatArea, checkNothingMissing, checkPlaces, checkRollBack, checkSides, checkSurfaceArea } from "./checkSurface";

const CLAIMS: Readonly<Record<string, (one: LawCase) => void>> = {
  "closes its loops exactly": checkClosed,
  "has loops that do not cross": checkSimple,
  "has outlines anticlockwise and openings clockwise": checkOrientation,
  "stays inside the blank": checkInsideBlank,
  "has equal seam edges": checkSeamEdges,
  "has the area of the slow quadrature": checkSurfaceArea,
  "keeps the area when laid flat": checkFlatArea,
  "keeps the cut edges' length when laid flat": checkEdgeLength,
  "rolls back onto the true edge": checkRollBack,
  "has material on the left of its edges": checkSides,
  "misses no true edge": (one) => checkNothingMissing(one, 21),
  "covers a place exactly where the surface is kept": (one) => checkPlaces(one, 22),
  "reports the true stretches at its stations": checkOrdinates,
  "has evenly spaced stations": checkSpacing,
  "sums up its stations": checkSummary,
  "counts its pieces": checkPieceCount,
  "says when it is in pieces": checkPiecesSaid,
};

const pipes = degeneratePipes();

describe.each(Object.entries(CLAIMS))("a pipe whose edges touch, coincide or run along elements %s", (_, check) => {
  it.each(pipes)("$name", ({ name, job }) => onCase(name, job, check));
});

describe("a pipe whose edges touch, coincide or run along elements", () => {
  it.each(pipes)("is made: $name", ({ job }) => {
    const outcome = develop(job);
    expect(outcome.ok || outcome.problems).toBe(refusalExpected(job) === null || outcome);
  });
});
