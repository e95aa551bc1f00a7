import { describe, expect, it } from "vitest";
import { crossCheck } from "../../../src/core/job/crossCheck";
import { defaultJob } from "../../../src/core/job/defaultJob";
import type { Job, PipePart, ShapedCut } from "../../../src/core/job/job";

function withPart(change: Partial<PipePart>): Job {
  const job = defaultJob();
  return { ...job, part: { ...job.part, diameter: 90, ...change } };
}

function rising(low: number, high: number): ShapedCut {
  const profile = { shape: "step", low, high, rising: "left", position: 0 } as const;
  return { id: "step", on: true, kind: "shaped", end: "top", direction: 0, profile };
}

describe("crossCheck of thickness", () => {
  it("crossCheck refuses a wall of half the outside diameter", () => {
    expect(crossCheck(withPart({ basis: "outside", thickness: 45 }))).toEqual([
      { code: "too-large", field: "part.thickness", value: 45, max: 45, detail: { basis: "outside", diameter: 90 } },
    ]);
  });

  it("crossCheck accepts a wall just under half the outside diameter", () => {
    expect(crossCheck(withPart({ basis: "outside", thickness: 44.999 }))).toEqual([]);
  });

  it("crossCheck refuses a wall of the mean diameter", () => {
    expect(crossCheck(withPart({ basis: "mean", thickness: 90 }))).toMatchObject([{ code: "too-large", max: 90 }]);
  });

  it("crossCheck accepts any wall round an inside diameter", () => {
    expect(crossCheck(withPart({ basis: "inside", thickness: 10_000 }))).toEqual([]);
  });
});

describe("crossCheck of levels", () => {
  it("crossCheck refuses a high level under the low one", () => {
    expect(crossCheck(withPart({ cuts: [rising(20, 10)] }))).toEqual([
      { code: "too-small", field: "part.cuts.0.profile.high", value: 10, min: 20, detail: { low: 20 } },
    ]);
  });

  it("crossCheck refuses a step of no height", () => {
    expect(crossCheck(withPart({ cuts: [rising(10, 10)] }))).toHaveLength(1);
  });

  it("crossCheck accepts a step", () => {
    expect(crossCheck(withPart({ cuts: [rising(10, 20)] }))).toEqual([]);
  });
});

describe("crossCheck of ids", () => {
  it("crossCheck names the second cut with an id and the first that has it", () => {
    const plane = defaultJob().part.cuts[0]!;
    expect(crossCheck(withPart({ cuts: [plane, { ...plane, id: "other" }, plane] }))).toEqual([
      { code: "duplicate-id", field: "part.cuts.2.id", value: "top", detail: { first: 0 } },
    ]);
  });

  it("crossCheck names the second item of a scheme with an id", () => {
    const item = { id: "views", text: "", marks: 3, by: "eye" } as const;
    const job = defaultJob();
    expect(crossCheck({ ...job, marking: { ...job.marking, items: [item, item] } })).toEqual([
      { code: "duplicate-id", field: "marking.items.1.id", value: "views", detail: { first: 0 } },
    ]);
  });
});
