import { describe, expect, it } from "vitest";
import { roundPipe } from "../../../src/core/form/pipe";
import { pipeCutters, shapesEnd } from "../../../src/core/part/pipeCutters";
import { openingCut, planeCut, shapedCut, type Cut } from "../../support/pipeJob";

const size = { diameter: 100, basis: "mean", thickness: 4, length: 250, attitude: "upright" } as const;
const pipe = roundPipe(size);
const mitre = planeCut({ angle: 30, height: 120 });
const short: Cut = shapedCut({ shape: "free", start: { x: -10, z: 0 }, legs: [{ to: { x: 10, z: 0 } }] }, { id: "short" });

describe("pipeCutters", () => {
  it("of no cuts are the two square ends", () => expect(pipeCutters(pipe, []).cutters.map(({ owner }) => owner.kind)).toEqual(["bottom", "top"]));
  it("keep the number a cut has in the job", () => {
    const { cutters } = pipeCutters(pipe, [{ ...mitre, on: false }, { ...mitre, id: "second" }]);
    expect(cutters.slice(2).map(({ owner }) => owner)).toEqual([{ kind: "cut", index: 1, id: "second" }]);
  });
  it("leave out a cut that is switched off", () => expect(pipeCutters(pipe, [{ ...mitre, on: false }]).cutters).toHaveLength(2));
  it("say what is wrong with a cut, and where", () => {
    expect(pipeCutters(pipe, [mitre, short]).problems.map(({ code, field }) => [code, field])).toEqual([["profile-not-across", "part.cuts.1.profile"]]);
  });
  it("do not look at a cut that is switched off", () => expect(pipeCutters(pipe, [{ ...short, on: false }]).problems).toEqual([]));
  it("find a slanting cut on the inside and the outside where an edge must clear both", () => {
    const both = roundPipe(size, { purpose: "blank", surface: "clear", kFactor: 0.5, paper: 0 });
    expect(pipeCutters(both, [mitre]).cutters.slice(2).map(({ radius }) => radius)).toEqual([48, 52]);
  });
});

describe("shapesEnd", () => {
  const cuts: readonly Cut[] = [mitre, openingCut({ shape: "round", diameter: 20 }, { height: 50 })];
  it("holds for the ends and a mitre, not for an opening", () => {
    expect(pipeCutters(pipe, cuts).cutters.map((cutter) => shapesEnd(cutter, cuts))).toEqual([true, true, true, false]);
  });
});
