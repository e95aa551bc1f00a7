import { describe, expect, it } from "vitest";
import { smoothEnd, smoothPoints, type SmoothEnd } from "../../../src/core/inspect/smoothCurve";
import { splineValue } from "../../../src/core/numeric/spline";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { pipeJob, planeCut, shapedCut, type Cut, type PipeDescription } from "../../support/pipeJob";

const smooth = (cut: Cut, pipe: Partial<PipeDescription> = {}): SmoothEnd => {
  const piece = developedPipe(pipeJob({ diameter: 100, length: 300, cuts: [cut], ...pipe }));
  return smoothEnd(piece, piece.stations, "top");
};
const mitre = planeCut({ angle: 60, height: 150, direction: 80 });
const step = shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 25 });
const tent = shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 });

describe("smoothEnd", () => {
  it("of a mitre is one closed spline", () => expect(smooth(mitre).stretches.map(({ at }) => at.length)).toEqual([13]));
  it("goes through the stations", () => {
    const piece = developedPipe(pipeJob({ diameter: 100, length: 300, cuts: [mitre] }));
    const [spline] = smoothEnd(piece, piece.stations, "top").stretches;
    for (const { girth, top } of piece.stations) expectClose(splineValue(spline!, girth).value, top!, 1e-10);
  });
  it("breaks at stations on corners: a vee seen from the front with stations in front and behind", () => {
    expect(smooth(tent).stretches).toHaveLength(2);
  });
  it("does not break at a corner that no station stands on", () => expect(smooth(tent, { seam: { at: "angle", angle: 7 } }).stretches).toHaveLength(1));
  it("breaks at stations on the upright of a step", () => {
    expect(smooth(step).stretches.map(({ value }) => value.every((z) => Math.abs(z - value[0]!) < 1e-9))).toEqual([true, true]);
  });
  it("is the same from either face but for its direction", () => {
    const [out, inside] = [smooth(step, { face: "outside" }), smooth(step, { face: "inside" })];
    expect(out.stretches.map(({ at }) => at.length).sort()).toEqual(inside.stretches.map(({ at }) => at.length).sort());
  });
  it("leaves out where no wall stands", () => {
    const gone = smooth(planeCut({ angle: 60, height: 60, direction: 0 }), { seam: { at: "front" } });
    expect(gone.stretches.every(({ value }) => value.every((z) => z >= 0))).toBe(true);
  });
});

describe("smoothPoints", () => {
  it("stay within the girth", () => {
    for (const cut of [mitre, step, tent]) {
      const curve = smooth(cut);
      for (const { x } of smoothPoints(curve).flat()) expect(x >= 0 && x <= curve.girth).toBe(true);
    }
  });
  it("of a mitre reach from seam to seam in one chain", () => {
    const curve = smooth(mitre);
    const chains = smoothPoints(curve);
    expect(chains.map((chain) => [chain[0]!.x, chain.at(-1)!.x])).toEqual([[0, curve.girth]]);
  });
  it("of a stretch over the seam come in two chains", () => {
    expect(smoothPoints(smooth(step, { seam: { at: "front" } })).length).toBe(3);
  });
});
