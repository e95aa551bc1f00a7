import { describe, expect, it } from "vitest";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob } from "../../support/pipeJob";

const slit = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [openingCut({ shape: "rectangle", width: 10, length: 600, turn: 0 }, { height: 100 })] })).trimmed;

describe("trimPipe", () => {
  it("says that a slit pipe does not close round", () => expect(slit.closedRound).toBe(false));
  it("says that an uncut pipe closes round", () => expect(developedPipe(pipeJob({ diameter: 100, length: 250 })).trimmed.closedRound).toBe(true));
  it("lists the edges of all loops", () => expect(slit.edges).toEqual(slit.loops.flat()));
});
