import { expect, test } from "vitest";
import { stationAfter } from "../../../src/app/screen/stationKeys";

test.each([
  ["ArrowRight", 3, 4],
  ["ArrowLeft", 3, 2],
  ["ArrowLeft", 0, 0],
  ["ArrowRight", 16, 16],
  ["ArrowRight", null, 0],
  ["Home", 9, 0],
  ["End", 9, 16],
  ["PageDown", 14, 16],
  ["Escape", 9, null],
  ["x", 9, undefined],
] as const)("stationAfter %s from %s of 17 is %s", (key, station, next) => {
  expect(stationAfter(key, station, 17)).toBe(next);
});
