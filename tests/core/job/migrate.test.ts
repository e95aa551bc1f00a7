import { describe, expect, it } from "vitest";
import { defaultJob } from "../../../src/core/job/defaultJob";
import { bringUpToDate, PRESENT_VERSION } from "../../../src/core/job/migrate";
import { parseJob } from "../../../src/core/job/parseJob";
import version1 from "./fixtures/version-1.json";

const HEADER = { format: "flatwright-job" };

describe("bringUpToDate from version 1", () => {
  it("bringUpToDate makes a good job of a version 1 file", () => {
    const { seam, stations, projection, part, ...rest } = version1;
    expect(parseJob(version1)).toEqual({
      ok: true,
      job: {
        ...rest,
        version: 2,
        part: { ...part, cuts: part.cuts.map((cut) => ({ ...cut, on: true })) },
        development: { seam: { at: "angle", angle: seam }, stations, critical: false, extra: [], face: "inside" },
        drawing: { projection, sheetScale: null },
        fabrication: defaultJob().fabrication,
        marking: defaultJob().marking,
        readings: null,
        exercise: defaultJob().exercise,
      },
    });
  });

  it("bringUpToDate keeps a seam given by name", () => {
    const parsed = parseJob({ ...version1, seam: "longest" });
    expect(parsed.ok && parsed.job.development.seam).toEqual({ at: "longest" });
  });

  it("bringUpToDate leaves the data as it was", () => {
    const data = structuredClone(version1);
    bringUpToDate(data);
    expect(data).toEqual(version1);
  });

  it("bringUpToDate leaves what it does not know to be refused", () => {
    expect(parseJob({ ...version1, colour: "red" })).toEqual({
      ok: false,
      problems: [{ code: "unknown-field", field: "colour" }],
    });
  });

  const sinceVersion1 = Object.keys(defaultJob()).filter((field) => !(field in version1));

  it("version 1 had far fewer fields", () => {
    expect(sinceVersion1).toEqual(expect.arrayContaining(["development", "exercise"]));
  });

  it.each(sinceVersion1)("bringUpToDate refuses %s, a field of version 2, in a version 1 file", (field) => {
    expect(parseJob({ ...version1, [field]: {} })).toEqual({ ok: false, problems: [{ code: "unknown-field", field }] });
  });

  it("bringUpToDate fills in what version 1 left out", () => {
    const { seam: _seam, stations: _stations, projection: _projection, ...rest } = version1;
    const parsed = parseJob(rest);
    expect(parsed.ok && parsed.job.development).toMatchObject({ seam: { at: "shortest" }, stations: 12 });
  });

  it.each([[null], [7], [{ cuts: 3 }], [{ cuts: [null, 4] }]])(
    "bringUpToDate leaves a broken part %j to be refused",
    (part) => expect(parseJob({ ...version1, part }).ok).toBe(false),
  );
});

describe("bringUpToDate of versions it cannot read", () => {
  it("bringUpToDate refuses a later version", () => {
    expect(bringUpToDate({ ...HEADER, version: PRESENT_VERSION + 1, anything: 1 })).toEqual({
      ok: false,
      problems: [{ code: "newer-version", field: "version", value: PRESENT_VERSION + 1, max: PRESENT_VERSION }],
    });
  });

  it.each([[0], [-1], [1.5], [NaN], ["2"], [null], [undefined], [{}]])(
    "bringUpToDate refuses version %j as one that never was",
    (version) =>
      expect(bringUpToDate({ ...HEADER, version })).toMatchObject({
        ok: false,
        problems: [{ code: "unknown-version", field: "version" }],
      }),
  );
});
