import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/develop";
import { pipeJob, planeCut } from "../support/pipeJob";

const job = pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ angle: 45, height: 120 })] });

describe("develop", () => {
  it("of a good job is one piece", () => {
    const outcome = develop(job);
    expect(outcome.ok && outcome.development.pieces.length).toBe(1);
  });
  it("of what is no job is a problem", () => expect(develop("pipe").ok).toBe(false));
  it("gives the same development twice", () => expect(develop(job)).toEqual(develop(job)));
  it("takes no more segments for a coarser pattern", () => {
    const count = (chordTolerance: number): number => {
      const outcome = develop(job, { chordTolerance });
      return outcome.ok ? outcome.development.pieces.flatMap(({ pattern }) => pattern.loops.flatMap(({ segments }) => segments)).length : NaN;
    };
    expect(count(1)).toBeLessThan(count(1e-5));
  });
  it("refuses a tolerance outside 1e-6 to 10 mm", () => {
    for (const chordTolerance of [0, 1e-7, 11, NaN]) expect(() => develop(job, { chordTolerance })).toThrow(RangeError);
  });
});
