import { describe, expect, it } from "vitest";
import { onRandomPipes } from "../support/lawCase";
import { checkClosedRound, checkPieceCount, checkPiecesSaid, slowPieceCount } from "./checkPieces";

describe("the pieces of a random cut pipe", () => {
  it("are as many as a flooded grid shows", () => onRandomPipes(checkPieceCount));
  it("are said to be separate exactly when they are several", () => onRandomPipes(checkPiecesSaid));
  it("are not said to close all round where an element is gone", () => onRandomPipes(checkClosedRound));
  it("are more than one in at least some cases", () => {
    let several = 0;
    onRandomPipes((one) => { several += (slowPieceCount(one) ?? 0) > 1 ? 1 : 0; }, 300);
    expect(several).toBeGreaterThan(5);
  });
});
