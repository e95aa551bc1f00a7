import { describe, expect, test } from "vitest";
import type { Diagnosis } from "../../../../src/core/inspect/drawn/diagnose";
import { marks, type MarksFrame } from "../../../../src/core/inspect/drawn/marks";
import type { Reading } from "../../../../src/core/inspect/drawn/readings";
import type { JudgedReading } from "../../../../src/core/inspect/drawn/verdict";
import type { MarkingItem } from "../../../../src/core/job/marking";

const judged = (reading: Reading, within: boolean): JudgedReading => ({ reading, expected: 0, deviation: within ? 0 : 9, within });
const tops = (right: number, of: number) => Array.from({ length: of }, (_, at) => judged({ line: "top", at, value: 0 }, at < right));
const item = (by: MarkingItem["by"], full: number): MarkingItem => ({ id: by, text: by, marks: full, by });
const frame = (part: Partial<MarksFrame>): MarksFrame => ({ judged: [], diagnosis: null, eye: () => null, ...part });
const explained = (...mistakes: Extract<Diagnosis, { kind: "explained" }>["explanation"]["mistakes"]): Diagnosis => ({ kind: "explained", unseen: [], explanation: { mistakes, strays: [], left: [], rms: 0, rmsBefore: 5 } });
const given = (items: MarkingItem[], part: Partial<MarksFrame>) => marks(items, frame(part)).items.map((one) => one.given);

describe("marks of readings", () => {
  test("go by the share within what is allowed, rounded down to halves", () => {
    // 10 of 13 ordinates: 6 × 10 / 13 = 4.6.
    const all = [judged({ line: "stretchOut", value: 0 }, true), judged({ line: "angle", cut: "a", value: 0 }, false), ...tops(10, 13)];
    expect(given([item("girth", 2), item("ordinates", 6), item("angles", 3)], { judged: all })).toEqual([2, 4.5, 0]);
  });

  test("are taken off for each reading outside", () => {
    expect(given([item("ordinates", -3)], { judged: tops(11, 13) })).toEqual([-6]);
  });

  test("wait as long as nothing of their kind is read, and are left out of the sum", () => {
    expect(marks([item("girth", 2), item("ordinates", 6)], frame({ judged: tops(13, 13) }))).toMatchObject({ sum: 6, of: 6, full: 8 });
    expect(given([item("girth", 2)], { judged: tops(13, 13) })).toEqual([null]);
  });
});

describe("marks of the teacher's eye", () => {
  test("are held between none and the item's, and overrule the readings", () => {
    expect(given([item("eye", 3)], { eye: () => 7 })).toEqual([3]);
    expect(given([item("eye", 3)], { eye: () => -1 })).toEqual([0]);
    expect(given([item("ordinates", 6)], { judged: tops(0, 13), eye: () => 5 })).toEqual([5]);
  });

  test("are taken off as often as a fault is counted; the sum is never under none", () => {
    expect(marks([item("eye", -2), item("girth", 2)], frame({ judged: [judged({ line: "stretchOut", value: 0 }, true)], eye: ({ by }) => (by === "eye" ? 4 : null) }))).toMatchObject({ sum: 0, of: 2 });
  });
});

describe("marks of the seam", () => {
  test("are given where the readings are right or explained without it, and lost where it is named", () => {
    expect(given([item("seam", 2), item("seam", -5)], { diagnosis: { kind: "right", unseen: [] } })).toEqual([2, 0]);
    expect(given([item("seam", 2), item("seam", -5)], { diagnosis: explained({ kind: "datum", offset: 3 }) })).toEqual([2, 0]);
    expect(given([item("seam", 2), item("seam", -5)], { diagnosis: explained({ kind: "seam", turn: 180 }) })).toEqual([0, -5]);
  });

  test("wait where the readings are not explained, or do not show where the seam stands", () => {
    expect(given([item("seam", 2)], { diagnosis: { kind: "unexplained", unseen: [] } })).toEqual([null]);
    expect(given([item("seam", 2)], { diagnosis: { kind: "right", unseen: [{ kind: "seam", turn: 180 }] } })).toEqual([null]);
  });
});
