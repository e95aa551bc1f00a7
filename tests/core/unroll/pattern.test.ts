import { describe, expect, it } from "vitest";
import { unrollPipe } from "../../../src/core/unroll/pattern";
import { pathArea } from "../../../src/core/geometry/path";
import { reverseSegment, segmentPoint } from "../../../src/core/geometry/segment";
import { expectAllClose, expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, type Cut } from "../../support/pipeJob";

const cuts: readonly Cut[] = [planeCut({ angle: 40, height: 150, direction: 30 }), openingCut({ shape: "round", diameter: 60 }, { height: 60, direction: 100 })];
const piece = (face: "inside" | "outside") => developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "back" }, cuts, face }));
const { pattern } = piece("outside");

describe("unrollPipe", () => {
  it("draws the outline anticlockwise", () => expect(pathArea(pattern.loops.find(({ kind }) => kind === "outline")!.segments)).toBeGreaterThan(0));
  it("draws an opening clockwise", () => expect(pathArea(pattern.loops.find(({ kind }) => kind === "opening")!.segments)).toBeLessThan(0));
  it("starts each segment exactly where the one before ends", () => {
    for (const { segments } of pattern.loops) segments.forEach(({ from }, i) => expect(from).toEqual(segments.at(i - 1)!.to));
  });
  it("lies between 0 and the girth", () => {
    for (const { from } of pattern.loops.flatMap(({ segments }) => segments)) expect(from.x >= 0 && from.x <= pattern.girth).toBe(true);
  });
  it("stretches from the base to the highest place of the cut", () => expectAllClose(pattern.height, [0, 150 + 50 * Math.tan((40 * Math.PI) / 180)], 1e-9));
  it("draws a square end as one line", () => {
    expect(pattern.loops.flatMap(({ segments }) => segments).filter(({ owner }) => owner.kind === "bottom").map(({ kind }) => kind)).toEqual(["line"]);
  });
  it("inside up is the mirror image of outside up", () => {
    const inside = piece("inside").pattern;
    pattern.loops.forEach(({ segments }, l) => {
      const turned = [...inside.loops[l]!.segments].reverse().map(reverseSegment);
      segments.forEach((segment, i) => {
        for (const u of [0, 0.4]) {
          const [one, other] = [segmentPoint(segment, u), segmentPoint(turned[i]!, u)];
          expectAllClose([pattern.girth - other.x, other.y], [one.x, one.y], 1e-11);
        }
      });
    });
  });
  it("of nothing is nothing", () => {
    const { form, cutters } = piece("outside");
    const empty = unrollPipe(form, cutters, { spans: [], loops: [], edges: [], components: 0, closedRound: false, area: 0 }, 1, 0.005);
    expect([empty.height, empty.loops, empty.proof.areaFlat]).toEqual([[0, 0], [], 0]);
  });
  it("refuses a tolerance that is not above zero", () => {
    const { form, cutters, trimmed } = piece("outside");
    expect(() => unrollPipe(form, cutters, trimmed, 1, 0)).toThrow(RangeError);
  });
  it("has the same area whichever element the seam stands on", () => {
    const areas = (["front", "right", "left"] as const).map((at) => developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at }, cuts })).pattern.proof.areaFlat);
    for (const area of areas) expectClose(area, pattern.proof.areaFlat, 0.05);
  });
});
