import { expect, it } from "vitest";
import type { Item } from "../../../src/drawing/display";
import { reusedItems } from "../../../src/drawing/board/reusedItems";

const circle = (x: number): Item => ({ kind: "circle", pen: "visible edge", centre: { x, y: 0 }, radius: 1 });

it("an item that says the same is the very object of before, another is the new one", () => {
  const before = [circle(1), circle(2), circle(3)];
  const now = [circle(1), circle(7), circle(3)];
  expect(reusedItems(before, now).map((item, i) => [item === before[i], item === now[i]])).toEqual([[true, false], [false, true], [true, false]]);
});

it("the items behind one that came or went are still found", () => {
  const before = [circle(1), circle(2), circle(3)];
  const more = reusedItems(before, [circle(1), circle(9), circle(2), circle(3)]);
  expect([more[0] === before[0], more[2] === before[1], more[3] === before[2]]).toEqual([true, true, true]);
  const fewer = reusedItems(before, [circle(2), circle(3)]);
  expect([fewer[0] === before[1], fewer[1] === before[2]]).toEqual([true, true]);
});

it("tells items apart by every value, and one that lacks a value from one that has it", () => {
  const [plain, referring] = [circle(1), { ...circle(1), ref: { clause: "part" as const } }];
  expect(reusedItems([referring], [plain])[0]).toBe(plain);
  expect(reusedItems([plain], [referring])[0]).toBe(referring);
});
