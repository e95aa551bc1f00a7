import { expect, test } from "vitest";
import { emptySheet, keptSheet, openedSheet, savedSheet, scaleFactor, type Sheet } from "../../../src/app/check/sheet";
import { typedReadings } from "../../../src/app/check/typedReadings";
import { CHOICES, type Job } from "../../../src/core/index";
import { developed, hole, pipeWith, slant } from "../pipe";

function typed(change: Partial<Sheet>, job: Job = pipeWith([slant, hole])) {
  const { pieces } = developed(job);
  if (!pieces[0]) throw new Error("no piece");
  return typedReadings(job, pieces[0], { ...emptySheet, ...change });
}

test("readings take sums, fractions, units and a decimal comma; empty fields are not measured", () => {
  const { readings, faults } = typed({ readings: { stretchOut: "280 + 2,5", "top 0": "6 1/4 in", "top 1": "" } });
  expect(readings.values).toEqual([{ line: "stretchOut", value: 282.5 }, { line: "top", at: 0, value: 158.75 }]);
  expect(faults).toEqual({});
});

test("in a job of inches a plain number is inches", () => {
  expect(typed({ readings: { "top 0": "6.25" } }, { ...pipeWith([slant]), units: "inch" }).readings.values).toEqual([{ line: "top", at: 0, value: 158.75 }]);
});

test("a text that is no number is a fault at its field and leaves the others", () => {
  const { readings, faults } = typed({ readings: { "top 0": "about 150", "top 1": "160" } });
  expect(faults["top 0"]).toEqual({ kind: "quantity", reason: "syntax" });
  expect(readings.values).toEqual([{ line: "top", at: 1, value: 160 }]);
});

test("how many spaces there are is held within reason; what is allowed is the job's", () => {
  const job = pipeWith([slant]);
  const { faults, rule, readings } = typed({ count: "3" }, { ...job, marking: { ...job.marking, tolerance: 2, girth: "either" } });
  expect(Object.keys(faults)).toEqual(["count"]);
  expect(rule).toMatchObject({ tolerance: 2, angle: 1, girth: "either" });
  expect(readings.count).toBe(16);
});

test("ends are read at every station, the opening where it is, the level foot nowhere", () => {
  const { places } = typed({});
  expect(places.angles).toEqual(["slope"]);
  expect(places.blocks.map(({ lines, rows }) => [lines.join(), rows.length])).toEqual([["top", 17], ["lower,upper", 3]]);
});

test("another count, start and direction number the drawing anew", () => {
  const { readings, places } = typed({ count: "12", start: "90", along: "against", scale: "1:2" });
  expect(places.blocks[0]?.rows).toHaveLength(13);
  expect(readings).toMatchObject({ count: 12, start: Math.PI / 2, scale: 0.5 });
  expect(readings.towards).toBe(-typed({}).readings.towards);
});

test("a drawing is taken to be at the scale of the job's sheets until another is said", () => {
  const job: Job = { ...pipeWith([slant]), drawing: { projection: "first", sheetScale: "1:2" } };
  expect(typed({}, job).readings.scale).toBe(0.5);
  expect(typed({ scale: "1:1" }, job).readings.scale).toBe(1);
  expect(typed({}).readings.scale).toBe(1);
  expect(CHOICES.drawnScale.of.map(scaleFactor)).toEqual([1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50, 1 / 100, 1 / 200, 1 / 500, 1 / 1000, 2, 5, 10]);
});

test("a sheet goes into a job file and comes back from it, without its empty fields", () => {
  const sheet: Sheet = { ...emptySheet, scale: "1:2", readings: { stretchOut: "141,5", "top 0": "" }, marks: { views: "3" } };
  expect(openedSheet(savedSheet(sheet))).toEqual({ ...sheet, readings: { stretchOut: "141,5" } });
});

test("a sheet that the browser kept is taken up, anything else is not", () => {
  expect(keptSheet(JSON.parse(JSON.stringify(emptySheet)))).toEqual(emptySheet);
  for (const bad of [null, 3, {}, { ...emptySheet, scale: "1:3" }, { ...emptySheet, readings: { a: 1 } }, { ...emptySheet, along: "?" }, { ...emptySheet, marks: { a: null } }]) expect(keptSheet(bad)).toBeNull();
});
