import { describe, expect, it } from "vitest";
import { distanceToSmooth, smoothEnd, smoothPoints, type SmoothEnd } from "../../../src/core/inspect/smoothCurve";
import { splineValue } from "../../../src/core/numeric/spline";
import type { Vec2 } from "../../../src/core/geometry/vector";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { pipeJob, planeCut, shapedCut, type Cut, type PipeDescription } from "../../support/pipeJob";
import { randomSource } from "../../support/randomSource";

const smooth = (cut: Cut, pipe: Partial<PipeDescription> = {}): SmoothEnd => {
  const piece = developedPipe(pipeJob({ diameter: 100, length: 300, cuts: [cut], ...pipe }));
  return smoothEnd(piece, piece.stations, "top");
};
const mitre = planeCut({ angle: 60, height: 150, direction: 80 });
const step = shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 25 });
const tent = shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 });

/** Least distance from 20000 points of each spline, laid a girth to the left, as it is, and a girth to the right. */
function bruteDistance({ girth, stretches }: SmoothEnd, point: Vec2): number {
  let least = Infinity;
  for (const spline of stretches) {
    const [from, to] = [spline.at[0]!, spline.at.at(-1)!];
    for (let i = 0; i <= 20000; i++) {
      const x = from + ((to - from) * i) / 20000;
      const { value } = splineValue(spline, x);
      for (const turn of [-girth, 0, girth]) least = Math.min(least, Math.hypot(x + turn - point.x, value - point.y));
    }
  }
  return least;
}

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

describe("distanceToSmooth", () => {
  it("is the least distance from 20000 points of the curve, on 60 points within 5 mm of it", () => {
    const curve = smooth(mitre);
    const source = randomSource(90);
    for (let n = 0; n < 60; n++) {
      const x = source.between(0, curve.girth);
      const point = { x, y: splineValue(curve.stretches[0]!, x).value + source.between(-5, 5) };
      expectClose(distanceToSmooth(curve, point, 0), bruteDistance(curve, point), 1e-3);
    }
  });
  it("goes on over the seam from both sides", () => {
    const curve = smooth(mitre);
    for (const x of [0.3, curve.girth - 0.3]) {
      for (const off of [-3, 3]) {
        const point = { x, y: splineValue(curve.stretches[0]!, x).value + off };
        expectClose(distanceToSmooth(curve, point, 0), bruteDistance(curve, point), 1e-3);
      }
    }
  });
  it("may stop at the first distance below what is asked", () => {
    const curve = smooth(mitre);
    const point = { x: 30, y: splineValue(curve.stretches[0]!, 30).value + 1 };
    const distance = distanceToSmooth(curve, point, 2);
    expect(distance >= distanceToSmooth(curve, point, 0) && distance <= 2).toBe(true);
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
