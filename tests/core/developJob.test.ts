import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/develop";
import { developJob } from "../../src/core/developJob";
import { parseJob } from "../../src/core/job/parseJob";
import { pipeJob, planeCut } from "../support/pipeJob";

const parsed = parseJob(pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ angle: 45, height: 120 })] }));
if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
const { job } = parsed;

describe("developJob", () => {
  it("of a checked job is what develop makes of it", () => expect(developJob(job)).toEqual(develop(job)));
  it("keeps the very job it was given", () => {
    const outcome = developJob(job);
    expect(outcome.ok && outcome.development.job).toBe(job);
  });
  it("refuses a tolerance outside 1e-6 to 10 mm", () => {
    for (const chordTolerance of [0, 1e-7, 11, NaN]) expect(() => developJob(job, { chordTolerance })).toThrow(RangeError);
  });
});
