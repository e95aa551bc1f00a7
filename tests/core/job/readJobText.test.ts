import { describe, expect, it, vi } from "vitest";
import { defaultJob } from "../../../src/core/job/defaultJob";
import { LIMITS } from "../../../src/core/job/limits";
import { readJobText } from "../../../src/core/job/readJobText";
import { writeJobText } from "../../../src/core/job/writeJobText";

const TEXT = writeJobText(defaultJob());

describe("readJobText", () => {
  it("readJobText reads a job", () => {
    expect(readJobText(TEXT)).toEqual({ ok: true, job: defaultJob() });
  });

  it("readJobText passes over a byte order mark", () => {
    expect(readJobText(`\uFEFF${TEXT}`)).toEqual({ ok: true, job: defaultJob() });
  });

  it("readJobText accepts a text as long as the limit", () => {
    expect(readJobText(TEXT.padEnd(LIMITS.file.max)).ok).toBe(true);
  });

  it("readJobText refuses a longer text without reading it", () => {
    expect(readJobText(TEXT.padEnd(LIMITS.file.max + 1))).toEqual({
      ok: false,
      problems: [{ code: "file-too-large", field: "", value: LIMITS.file.max + 1, max: LIMITS.file.max }],
    });
  });

  it("readJobText does not parse 50 million characters", () => {
    const parse = vi.spyOn(JSON, "parse");
    readJobText("[".repeat(50_000_000));
    expect(parse).not.toHaveBeenCalled();
    parse.mockRestore();
  });

  it("readJobText tells where the JSON breaks off when the engine does", () => {
    expect(readJobText('{\n  "format": 1 2\n}')).toEqual({
      ok: false,
      problems: [{ code: "not-json", field: "", detail: { line: 2, column: 15 } }],
    });
  });

  it("readJobText tells that a truncated file ends too early", () => {
    expect(readJobText('{\n"format":')).toEqual({
      ok: false,
      problems: [{ code: "not-json", field: "", detail: { line: 2, column: 10 } }],
    });
  });

  it("readJobText reads no file cut off anywhere", () => {
    const lengths = Array.from({ length: TEXT.trimEnd().length }, (_, length) => length);
    expect(lengths.filter((length) => readJobText(TEXT.slice(0, length)).ok)).toEqual([]);
  });

  it.each([[""], ["   "], ["<!doctype html>"], ["%PDF-1.7"], ["\u0000\u0001"], ["{'format':1}"], ["NaN"]])(
    "readJobText refuses %j as no JSON",
    (text) => expect(readJobText(text)).toMatchObject({ ok: false, problems: [{ code: "not-json", field: "" }] }),
  );

  it.each([["[]"], ["null"], ["3"], ['"text"'], ["{}"]])("readJobText refuses %s as no job", (text) => {
    expect(readJobText(text)).toEqual({ ok: false, problems: [{ code: "not-a-job", field: "" }] });
  });

  it("readJobText survives lists half a million deep", () => {
    const text = `{"format":"flatwright-job","version":2,"part":${"[".repeat(490_000)}${"]".repeat(490_000)}}`;
    expect(readJobText(text)).toEqual({ ok: false, problems: [{ code: "wrong-type", field: "part" }] });
  });

  it("readJobText looks at none of a hundred thousand cuts", () => {
    const part = `{"kind":"pipe","diameter":90,"length":220,"cuts":[${"{},".repeat(100_000)}0]}`;
    expect(readJobText(`{"format":"flatwright-job","version":2,"part":${part}}`)).toEqual({
      ok: false,
      problems: [{ code: "too-many", field: "part.cuts", max: 64 }],
    });
  });
});
