import { describe, it } from "vitest";
import { onRandomPipes } from "../support/lawCase";
import { checkClosed, checkInsideBlank, checkOrientation, checkSeamEdges, checkSimple } from "./checkLoops";

describe("the loops of a random cut pipe's pattern", () => {
  it("close exactly", () => onRandomPipes(checkClosed));
  it("cross neither themselves nor each other", () => onRandomPipes(checkSimple));
  it("run anticlockwise as outlines and clockwise as openings", () => onRandomPipes(checkOrientation));
  it("stay inside the blank", () => onRandomPipes(checkInsideBlank));
  it("have equal edges on both sides of the seam", () => onRandomPipes(checkSeamEdges));
});
