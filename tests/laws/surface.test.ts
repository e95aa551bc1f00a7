import { describe, expect, it } from "vitest";
import { CASES, onRandomPipes } from "../support/lawCase";
import { randomPipe } from "../support/randomPipe";
import { checkEdgeLength, checkFlatArea, checkNothingMissing, checkPlaces, checkRollBack, checkSides, checkSurfaceArea } from "./checkSurface";

describe("the pattern of a random cut pipe against its surface", () => {
  it("has the area of the slow quadrature", () => onRandomPipes(checkSurfaceArea));
  it("keeps the area when laid flat", () => onRandomPipes(checkFlatArea));
  it("keeps the length of the cut edges when laid flat", () => onRandomPipes(checkEdgeLength));
  it("rolls back onto the true edge within 0.005 mm", () => onRandomPipes(checkRollBack));
  it("has material on the left of its edges and none on the right", () => onRandomPipes(checkSides));
  it("misses no true edge", () => onRandomPipes((one) => checkNothingMissing(one, 11)));
  it("covers a place exactly where the surface is kept", () => onRandomPipes((one) => checkPlaces(one, 12)));
  it("is tried on at least 70 of 100 random pipes", () => {
    let tried = 0;
    onRandomPipes(() => { tried += 1; });
    expect(tried).toBeGreaterThanOrEqual(0.7 * CASES);
  });
  it("is tried on the same pipe for the same number", () => expect(randomPipe(17)).toEqual(randomPipe(17)));
});
