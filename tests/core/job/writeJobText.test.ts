import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultJob } from "../../../src/core/job/defaultJob";
import { readJobText } from "../../../src/core/job/readJobText";
import { writeJobText } from "../../../src/core/job/writeJobText";
import { jobArbitrary } from "./jobArbitrary";

describe("writeJobText", () => {
  it("writeJobText writes what readJobText reads back", () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        expect(readJobText(writeJobText(job))).toEqual({ ok: true, job });
      }),
      { seed: 4, numRuns: 1000 },
    );
  });

  it("writeJobText writes the same text whatever the order of the fields", () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        expect(writeJobText(reversed(job) as typeof job)).toBe(writeJobText(job));
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("writeJobText begins with the format and the version", () => {
    expect(writeJobText(defaultJob()).split("\n").slice(0, 3)).toEqual([
      "{",
      '  "format": "flatwright-job",',
      '  "version": 2,',
    ]);
  });

  it("writeJobText ends with one newline", () => {
    expect(writeJobText(defaultJob())).toMatch(/\}\n$/);
  });
});

/** The same data with the fields of every object in reverse order. */
function reversed(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(reversed);
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(
    Object.entries(data)
      .reverse()
      .map(([key, value]) => [key, reversed(value)]),
  );
}
