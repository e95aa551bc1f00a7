import { describe, expect, it } from "vitest";
import { endOf, placeOf, runsOf, withoutSpecks } from "../../../src/core/fabricate/place";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob } from "../../support/pipeJob";
import { slope } from "./pieces";

const cuts = [slope, openingCut({ shape: "round", diameter: 30 }, { height: 60, direction: 180 })];
const piece = developedPipe(pipeJob({ diameter: 100, length: 200, cuts }));
const outline = piece.pattern.loops.find(({ kind }) => kind === "outline")!;

describe("endOf", () => {
  it("endOf a cut is its end, of an opening none", () => {
    expect(endOf({ kind: "cut", index: 0, id: "plane" }, cuts)).toBe("top");
    expect(endOf({ kind: "cut", index: 1, id: "opening" }, cuts)).toBeNull();
    expect(endOf({ kind: "bottom" }, cuts)).toBe("bottom");
    expect(endOf({ kind: "seam" }, cuts)).toBeNull();
  });
});

describe("runsOf", () => {
  it("runsOf an outline go once round its four places", () =>
    expect(runsOf(outline.segments, piece.pattern.girth, cuts).map(({ place }) => place).sort()).toEqual(["bottom", "seam-end", "seam-start", "top"]));
  it("runsOf keep every segment", () =>
    expect(runsOf(outline.segments, piece.pattern.girth, cuts).flatMap(({ segments }) => segments)).toHaveLength(outline.segments.length));
  it("runsOf an opening are one without a place", () => {
    const hole = piece.pattern.loops.find(({ kind }) => kind === "opening")!;
    expect(runsOf(hole.segments, piece.pattern.girth, cuts).map(({ place }) => place)).toEqual([null]);
  });
});

describe("placeOf", () => {
  it("placeOf a seam edge is by its side of the pattern", () => {
    const line = (x: number) => ({ kind: "line", from: { x, y: 0 }, to: { x, y: 9 }, owner: { kind: "seam" } }) as const;
    expect([placeOf(line(0), 300, []), placeOf(line(300), 300, [])]).toEqual(["seam-start", "seam-end"]);
  });
});

describe("withoutSpecks", () => {
  it("withoutSpecks closes the loop over what it leaves out", () => {
    const point = (x: number, y: number) => ({ x, y });
    const line = (a: { x: number; y: number }, b: { x: number; y: number }) => ({ kind: "line", from: a, to: b, owner: { kind: "top" } }) as const;
    const [a, b, c, d] = [point(0, 0), point(5, 0), point(5, 1e-7), point(5, 5)];
    expect(withoutSpecks([line(a, b), line(b, c), line(c, d), line(d, a)], 1e-5)).toEqual([line(a, b), line(b, d), line(d, a)]);
  });
});
