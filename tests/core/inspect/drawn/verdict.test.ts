import { describe, expect, it } from "vitest";
import { verdict, type Reading, type Readings } from "../../../../src/core/index";
import { expectClose } from "../../../support/approximate";
import { pipeJob, planeCut, shapedCut } from "../../../support/pipeJob";

const job = pipeJob({ diameter: 100, length: 200, cuts: [planeCut({ angle: 45, height: 80, direction: 0 })], seam: { at: "shortest" } });
const read = (values: readonly Reading[], scale = 1): Readings => ({ scale, count: 12, start: Math.PI, towards: 1, values });
const RULE = { tolerance: 1, angle: 1, girth: "exact" } as const;
const girth = (value: number, rule: "exact" | "stepped" | "either" = "exact") => verdict(job, read([{ line: "stretchOut", value }]), { ...RULE, girth: rule });

describe("verdict", () => {
  it("compares each ordinate with the true one, on the paper at its scale", () => {
    // 80 - 50 cos 60° = 55 at station 2; 27.5 on a drawing at 1:2.
    const { judged, largest, mean, meanSize, outside } = verdict(job, read([{ line: "top", at: 2, value: 28.2 }, { line: "top", at: 6, value: 63 }], 0.5), RULE);
    expectClose(judged[0]!.expected!, 27.5, 1e-9);
    expectClose(judged[0]!.deviation!, 0.7, 1e-9);
    expect(judged.map(({ within }) => within)).toEqual([true, false]);
    expectClose(largest, 2, 1e-9);
    expectClose(mean, -0.65, 1e-9);
    expectClose(meanSize, 1.35, 1e-9);
    expect(outside).toBe(1);
  });

  it("recognises a girth stepped off with chords and judges it by the teacher's rule", () => {
    // DIS-01: twelve chords are 0.98861593 of πd, elementary.
    const stepped = 0.98861593 * 100 * Math.PI;
    expect(girth(stepped).girth).toBe("stepped");
    expect(girth(stepped).outside).toBe(1);
    expect(girth(stepped, "stepped").outside).toBe(0);
    expect(girth(stepped, "either").outside).toBe(0);
    expect(girth(100 * Math.PI, "stepped").outside).toBe(1);
    expectClose(girth(stepped).girths.stepped, stepped, 1e-5);
  });

  it("tells no girth apart where it is neither, or both by the tolerance", () => {
    expect(girth(300).girth).toBeNull();
    expect(verdict(job, read([{ line: "top", at: 0, value: 30 }]), RULE).girth).toBeNull();
    expect(verdict(job, read([{ line: "stretchOut", value: 31.2 }], 0.1), RULE).girth).toBe("same");
  });

  it("judges the angle of a cut in degrees, apart from the lengths", () => {
    const { judged, largest } = verdict(job, read([{ line: "angle", cut: "plane", value: 46.5 }]), RULE);
    expect(judged[0]).toMatchObject({ expected: 45, within: false });
    expect(largest).toBe(0);
  });

  it("accepts either end of an edge that runs along the element", () => {
    const step = pipeJob({ diameter: 100, length: 200, cuts: [shapedCut({ shape: "step", low: 60, high: 90, rising: "right", position: 0 })], seam: { at: "left" } });
    for (const value of [60.4, 89.8]) {
      const { judged } = verdict(step, { scale: 1, count: 12, start: 1.5 * Math.PI, towards: 1, values: [{ line: "top", at: 3, value }] }, RULE);
      expect(judged[0]!.within).toBe(true);
    }
  });

  it("finds nothing to judge where there is nothing to read", () => {
    expect(verdict(job, read([{ line: "lower", at: 2, value: 10 }]), RULE).judged[0]).toMatchObject({ expected: null, deviation: null, within: false });
  });

  it("refuses tolerances that are not positive", () => {
    expect(() => verdict(job, read([]), { ...RULE, tolerance: NaN })).toThrow(RangeError);
    expect(() => verdict(job, read([]), { ...RULE, angle: 0 })).toThrow(RangeError);
  });
});
