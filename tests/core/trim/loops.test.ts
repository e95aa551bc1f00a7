import { describe, expect, it } from "vitest";
import { edgePoint } from "../../../src/core/trim/edge";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, type Cut } from "../../support/pipeJob";

const loopsOf = (cuts: readonly Cut[]) => developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "back" }, cuts })).trimmed.loops;
const hole = openingCut({ shape: "round", diameter: 60 }, { height: 100 });

describe("loopsOf", () => {
  it("of an uncut pipe is a rectangle: bottom, seam, top, seam", () => {
    expect(loopsOf([]).map((loop) => loop.map(({ owner }) => owner.kind).sort())).toEqual([["bottom", "seam", "seam", "top"]]);
  });
  it("of a pipe with an opening are two", () => expect(loopsOf([hole])).toHaveLength(2));
  it("of a pipe with an opening across the seam is one", () => expect(loopsOf([{ ...hole, direction: 180 }])).toHaveLength(1));
  it("of a pipe with an opening through both walls, away from the seam, are three", () => {
    expect(loopsOf([{ ...hole, direction: 90, through: "both" }])).toHaveLength(3);
  });
  it("of a mitre draws the cut as one edge from seam to seam", () => {
    expect(loopsOf([planeCut({ angle: 30, height: 120 })])[0]!.filter(({ owner }) => owner.kind === "cut")).toHaveLength(1);
  });
  it("starts each edge where the one before ends, round the whole loop", () => {
    const cuts = [planeCut({ angle: 50, height: 150, direction: 20 }), hole, openingCut({ shape: "slot", width: 20, length: 70, turn: 30 }, { height: 130, direction: 60, id: "slot" })];
    const { trimmed, cutters } = developedPipe(pipeJob({ diameter: 100, length: 250, cuts }));
    for (const loop of trimmed.loops) {
      loop.forEach((edge, i) => {
        const [end, start] = [edgePoint(cutters, loop.at(i - 1)!, 1), edgePoint(cutters, edge, 0)];
        expect(start.theta).toBe(end.theta);
        expect(start.z).toBe(end.z);
      });
    }
  });
  it("keeps the material on the left: the bottom edge runs with growing θ, the top edge against", () => {
    const [loop] = loopsOf([]);
    const turn = (kind: string): number => loop!.filter(({ owner }) => owner.kind === kind).reduce((sum, { from, to }) => sum + to - from, 0);
    expectClose(turn("bottom"), 2 * Math.PI, 1e-12);
    expectClose(turn("top"), -2 * Math.PI, 1e-12);
  });
});
