import { expect, test } from "vitest";
import { marksFor } from "../../../src/app/check/marksFor";
import type { JudgedReading, Reading } from "../../../src/core/index";

const judged = (reading: Reading, within: boolean): JudgedReading => ({ reading, expected: 0, deviation: within ? 0 : 9, within });
const tops = (right: number, of: number) => Array.from({ length: of }, (_, at) => judged({ line: "top", at, value: 0 }, at < right));
const scheme = { girth: 2, ordinates: 6, angles: 3 };

test("marks go by the share within the tolerance, rounded down to halves", () => {
  // 10 of 13 ordinates: 6 × 10 / 13 = 4.6.
  const marks = marksFor({ judged: [judged({ line: "stretchOut", value: 0 }, true), ...tops(10, 13)] }, scheme);
  expect(marks.got).toEqual({ girth: 2, ordinates: 4.5, angles: 0 });
});

test("what was not read is left out of the full marks", () => {
  expect(marksFor({ judged: tops(13, 13) }, scheme)).toMatchObject({ sum: 6, of: 6 });
  expect(marksFor({ judged: [] }, scheme)).toMatchObject({ sum: 0, of: 0 });
});
