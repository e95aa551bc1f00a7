// @vitest-environment jsdom
import { beforeEach, expect, test } from "vitest";
import { readText, takeBack, takeReadings } from "../../../src/app/photo/takeReading";
import { readingAfresh, useReadingOff } from "../../../src/app/photo/readingOff";
import { emptySheet, type Sheet } from "../../../src/app/check/sheet";
import { changeSheet, pieceKey, useSheets } from "../../../src/app/check/sheets";
import type { Check } from "../../../src/app/check/useCheck";
import { formatOf } from "../../../src/app/quantity/format";
import { useApp } from "../../../src/app/store/store";

const settings = { places: 2, denominator: 0, comma: false } as const;
const row = (at: number) => ({ label: String(at), at, station: at });
const sheet = (): Sheet => useSheets.getState().all[pieceKey(useApp.getState().development.job)] ?? emptySheet;
const check = () => ({ sheet: sheet() }) as unknown as Check;
const take = (at: number, text: string, replace = false) => takeReadings(check(), "top", [{ row: row(at), text }], replace);

beforeEach(() => {
  useSheets.setState({ all: {}, last: null, student: null });
  useReadingOff.setState(readingAfresh);
});

test("a height is written as fine as a picture shows it", () => {
  expect(readText(157.3449, formatOf("mm", settings))).toBe("157.3");
  expect(readText(157.3449, formatOf("mm", { ...settings, comma: true }))).toBe("157,3");
  expect(Number(readText(25.4, formatOf("inch", settings)))).toBe(1);
});

test("readings go into empty fields and over those the picture gave, and each step is taken back", () => {
  expect(take(1, "50")).toEqual([]);
  expect(take(1, "51")).toEqual([]);
  expect(sheet().readings).toEqual({ "top 1": "51" });
  takeBack();
  expect(sheet().readings["top 1"]).toBe("50");
  takeBack();
  expect(sheet().readings["top 1"]).toBe("");
  expect(takeBack()).toBeNull();
});

test("what was typed is passed over unless it is to be replaced, and comes back", () => {
  changeSheet((now) => ({ ...now, readings: { "top 2": "60" } }));
  expect(take(2, "61").map(({ text }) => text)).toEqual(["61"]);
  expect(sheet().readings["top 2"]).toBe("60");
  expect(take(2, "61", true)).toEqual([]);
  expect(sheet().readings["top 2"]).toBe("61");
  takeBack();
  expect(sheet().readings["top 2"]).toBe("60");
});

test("a field typed into after the picture filled it is typed, and is not taken back over", () => {
  take(3, "70");
  changeSheet((now) => ({ ...now, readings: { ...now.readings, "top 3": "72" } }));
  expect(take(3, "70.5")).toHaveLength(1);
  takeBack();
  expect(sheet().readings["top 3"]).toBe("72");
});
