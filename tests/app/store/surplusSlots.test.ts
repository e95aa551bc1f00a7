import { expect, test } from "vitest";
import type { Slot } from "../../../src/app/store/slots";
import { surplusSlots } from "../../../src/app/store/surplusSlots";

const day = 24 * 60 * 60 * 1000;
const now = 1000 * day;
const slot = (key: string, age: number, text = key): Slot => ({ key, savedAt: now - age * day, text });
const gone = (all: readonly Slot[], inUse: readonly string[] = []) => surplusSlots(all, new Set(inUse), now).map(({ key }) => key);

test("surplusSlots keeps the only copy of a work, however old", () => {
  expect(gone([slot("a", 900)])).toEqual([]);
});

test("surplusSlots lets the older of two that say the same go", () => {
  expect(gone([slot("new", 1, "same"), slot("old", 2, "same")])).toEqual(["old"]);
});

test("surplusSlots lets one go that says the same as one in use, and never one in use", () => {
  expect(gone([slot("closed", 1, "same"), slot("open", 2, "same")], ["open"])).toEqual(["closed"]);
});

test("surplusSlots keeps what is younger than a month, however many", () => {
  expect(gone(Array.from({ length: 40 }, (_, i) => slot(`s${i}`, i / 2)))).toEqual([]);
});

test("surplusSlots keeps the last twelve, however old, and lets the rest go", () => {
  expect(gone(Array.from({ length: 15 }, (_, i) => slot(`s${i}`, 100 + i)))).toEqual(["s12", "s13", "s14"]);
});
