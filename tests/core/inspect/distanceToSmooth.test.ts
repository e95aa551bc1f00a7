import { describe, expect, it } from "vitest";
import { distanceToSmooth } from "../../../src/core/inspect/distanceToSmooth";
import { smoothEnd, type SmoothEnd } from "../../../src/core/inspect/smoothCurve";
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
  const steep = shapedCut({ shape: "vee", angle: 60, centre: 0, height: 100 });
  it.each([["step", step], ["vee", steep]] as const)("is the least distance where the curve of a %s is steep", (_, cut) => {
    const curve = smooth(cut, { stations: 16, seam: { at: "angle", angle: 7 } });
    const source = randomSource(91);
    for (let n = 0; n < 40; n++) {
      const point = { x: source.between(0, curve.girth), y: source.between(90, 160) };
      expectClose(distanceToSmooth(curve, point, 0), bruteDistance(curve, point), 5e-3);
    }
  });
});
