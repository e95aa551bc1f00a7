import { expect, test } from "vitest";
import { eyeMarks, marksByEye, oddMarks } from "../../../src/app/check/marksByEye";
import type { MarkingItem } from "../../../src/core/index";

const item = (marks: number): MarkingItem => ({ id: "views", text: "Views", marks, by: "eye" });
const read = (text: string, marks: number) => eyeMarks({ marks: { views: text } }, item(marks));
const code = (text: string, marks: number) => {
  const seen = read(text, marks);
  return seen === null || seen.ok ? seen?.value : seen.fault.kind === "problem" ? seen.fault.problem.code : seen.fault.kind === "quantity" && seen.fault.reason;
};

test("marks between none and the item's are given, halves too, with either decimal mark", () => {
  expect(["0", "3", "2.5", "2,5", "1 1/2"].map((text) => code(text, 3))).toEqual([0, 3, 2.5, 2.5, 1.5]);
  expect(read("  ", 3)).toBeNull();
});

test("more than the item has, fewer than none and text are refused, and count for nothing", () => {
  expect(["7", "3.01", "-1", "good", "2 mm"].map((text) => code(text, 3))).toEqual(["too-large", "too-large", "too-small", "syntax", "unit"]);
  expect(marksByEye({ marks: { views: "7" } })(item(1))).toBeNull();
  expect(oddMarks({ marks: { views: "7" } }, [item(1), { ...item(1), id: "other" }])).toEqual([item(1)]);
});

test("what is taken off is counted in whole faults, however many", () => {
  expect(["0", "4", "12", "1.5", "-2"].map((text) => code(text, -2))).toEqual([0, 4, 12, "not-whole", "too-small"]);
});
