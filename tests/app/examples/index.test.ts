import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { EXAMPLES } from "../../../src/app/examples/index";
import { parseJob, writeJobText } from "../../../src/core/index";

const FOLDER = new URL("../../../src/app/examples/", import.meta.url);
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith(".json"));
const JOBS = EXAMPLES.map(({ data }) => {
  const parsed = parseJob(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.job;
});
const CUTS = JOBS.flatMap(({ part }) => part.cuts);

describe("EXAMPLES", () => {
  it("EXAMPLES lists every file of the folder in order", () => {
    expect(EXAMPLES.map(({ id }, index) => `${index + 1}-${id}.json`)).toEqual(FILES.sort());
  });

  it.each(FILES.map((file, index) => ({ file, index })))("EXAMPLES has $file as the app would save it", ({ file, index }) => {
    expect(writeJobText(JOBS[index]!)).toBe(readFileSync(new URL(file, FOLDER), "utf8"));
  });

  it("EXAMPLES have a title and a note each", () => {
    expect(JOBS.filter(({ title, note }) => title === "" || note === "")).toEqual([]);
  });

  it("EXAMPLES cover every shape of end and opening", () => {
    const shapes = CUTS.map((cut) => {
      if (cut.kind === "plane") return `plane ${cut.end}`;
      return cut.kind === "shaped" ? cut.profile.shape : cut.outline.shape;
    });
    const wanted = ["plane top", "plane bottom", "hollow", "nose", "ogee", "step", "vee", "free"];
    expect(new Set(shapes)).toEqual(new Set([...wanted, "round", "rectangle", "slot"]));
  });

  it("EXAMPLES cover both walls, both attitudes, both angles of projection and both units", () => {
    const used = JOBS.flatMap(({ units, part, drawing }) => [units, part.attitude, drawing.projection, part.basis]);
    const walls = CUTS.flatMap((cut) => (cut.kind === "opening" ? [cut.through] : []));
    const wanted = ["mm", "inch", "upright", "lying", "first", "third", "outside", "inside", "mean", "near", "both"];
    expect(new Set([...used, ...walls])).toEqual(new Set(wanted));
  });
});
