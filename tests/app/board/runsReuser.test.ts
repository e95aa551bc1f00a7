import { expect, test } from "vitest";
import { runsReuser } from "../../../src/app/board/runsReuser";
import type { Item, PathItem } from "../../../src/drawing/display";

const line = (clause: "part" | "cut:a" | "cut:b", to: number): PathItem => ({
  kind: "path", pen: "visible edge", segments: [{ kind: "line", from: { x: 0, y: 0 }, to: { x: to, y: 0 } }], closed: false, ref: { clause },
});

test("what is as it was is given under its name of before, whatever comes or goes round it", () => {
  const reusedRuns = runsReuser();
  const items = (moving: number, more: boolean): Item[] => [line("part", 1), line("cut:a", moving), ...(more ? [line("cut:b", 1)] : []), line("part", 2), line("part", 3)];
  const first = reusedRuns(items(1, false));
  const second = reusedRuns(items(2, true));
  expect(second.map(({ key }) => key)).toEqual(["part 0", "cut:a 0", "cut:b 0", "part 1"]);
  expect(second[0]).toBe(first[0]);
  expect(second[1]).not.toBe(first[1]);
  expect(second[3]).toBe(first[2]);
});

test("two drawings are kept apart", () => {
  const one = runsReuser()([line("part", 1)]);
  expect(runsReuser()([line("part", 1)])[0]).not.toBe(one[0]);
});
