import type { LawCase } from "../support/lawCase";
import { checkClosed, checkInsideBlank, checkOrientation, checkSeamEdges, checkSimple } from "./checkLoops";
import { checkNumbers } from "./checkNumbers";
import { checkClosedRound, checkPieceCount, checkPiecesSaid } from "./checkPieces";
import { checkOrdinates, checkSpacing, checkSummary } from "./checkStations";
import { checkEdgeLength, checkFlatArea, checkNothingMissing, checkPlaces, checkRollBack, checkSides, checkSurfaceArea } from "./checkSurface";

/** What holds for every pipe that is made: the claim, and the check that throws where it does not hold. */
export const CLAIMS: readonly (readonly [string, (one: LawCase) => void])[] = [
  ["has loops that close exactly", checkClosed],
  ["has loops that cross neither themselves nor each other", checkSimple],
  ["has outlines that run anticlockwise and openings that run clockwise", checkOrientation],
  ["has a pattern inside the blank", checkInsideBlank],
  ["has equal edges on both sides of the seam", checkSeamEdges],
  ["has the area of the slow quadrature", checkSurfaceArea],
  ["keeps its area when laid flat", checkFlatArea],
  ["keeps the length of its edges when laid flat", checkEdgeLength],
  ["has edges that roll back onto the true edge within 0.005 mm", checkRollBack],
  ["has material on the left of its edges and none on the right", checkSides],
  ["has a pattern that misses no true edge", checkNothingMissing],
  ["covers a place exactly where the surface is kept", checkPlaces],
  ["reports the kept stretches of its stations to 1e-9 of its size", checkOrdinates],
  ["has stations at equal steps of the girth", checkSpacing],
  ["sums up the stretches of its stations", checkSummary],
  ["has as many pieces as a flooded grid shows", checkPieceCount],
  ["is said to be in separate pieces exactly when it is", checkPiecesSaid],
  ["is not said to close all round where an element is gone", checkClosedRound],
  ["holds no NaN", ({ development }) => checkNumbers(development)],
];
