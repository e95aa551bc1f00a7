import { describe, expect, it } from "vitest";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut, type PipeDescription } from "../../support/pipeJob";

const notices = (pipe: Partial<PipeDescription>): string[] =>
  developed(pipeJob({ diameter: 100, length: 250, ...pipe })).notices.map(({ code, field }) => `${code} at ${field}`);
const slit = openingCut({ shape: "rectangle", width: 10, length: 600, turn: 0 }, { height: 100 });

describe("pipeNotices", () => {
  it("of a plain mitre are none", () => expect(notices({ cuts: [planeCut({ angle: 30, height: 120 })] })).toEqual([]));
  it("name a cut that leaves no edge", () => expect(notices({ cuts: [planeCut({ angle: 30, height: 400 })] })).toEqual(["cut-misses at part.cuts.0"]));
  it("do not name such a cut when it is switched off", () => expect(notices({ cuts: [planeCut({ angle: 30, height: 400, on: false })] })).toEqual([]));
  it("name a pipe that does not close round", () => expect(notices({ cuts: [slit] })).toEqual(["open-round at part.cuts"]));
  it("name separate pieces", () => {
    const band = openingCut({ shape: "rectangle", width: 300, length: 20, turn: 0 }, { height: 100, through: "both" });
    expect(notices({ cuts: [band] })).toEqual(["separate-pieces at part.cuts"]);
  });
  it("name a wall above a fifth of the mean diameter", () => expect(notices({ thickness: 20.1 })).toEqual(["thick-for-diameter at part.thickness"]));
  it("do not name a wall of a fifth", () => expect(notices({ thickness: 20 })).toEqual([]));
});
