import { describe, expect, it } from "vitest";
import type { Box } from "../../src/drawing/box";
import { cellGrid } from "../../src/drawing/cellGrid";
import { boxesOverlap } from "../../src/drawing/box";
import { randomSource } from "../support/randomSource";

const bounds: Box = { left: -100, right: 300, bottom: 0, top: 50 };

describe("cellGrid", () => {
  it("never misses a thing whose box overlaps the one asked about, inside the bounds, across them and beyond", () => {
    const source = randomSource(7);
    const box = (): Box => {
      const left = source.between(-200, 400), bottom = source.between(-40, 90);
      return { left, right: left + source.between(0, 60), bottom, top: bottom + source.between(0, 30) };
    };
    const boxes = Array.from({ length: 200 }, box);
    const grid = cellGrid<Box>(bounds);
    for (const one of boxes) grid.add(one, one);
    let met = 0;
    for (let n = 0; n < 500; n++) {
      const asked = box();
      const found = grid.some(asked, (one) => boxesOverlap(one, asked));
      expect(found).toBe(boxes.some((one) => boxesOverlap(one, asked)));
      if (found) met++;
    }
    expect(met).toBeGreaterThan(100);
    expect(met).toBeLessThan(500);
  });
  it("asks only what lies near", () => {
    const grid = cellGrid<number>(bounds);
    for (let x = 0; x < 200; x++) grid.add(x, { left: x, right: x, bottom: 10, top: 10 });
    const asked = new Set<number>();
    grid.some({ left: 50, right: 52, bottom: 9, top: 11 }, (x) => asked.add(x) === null);
    expect(asked.has(51)).toBe(true);
    expect(asked.size).toBeLessThan(40);
  });
  it("of things in one place only, and of none, works as well", () => {
    const grid = cellGrid<string>({ left: 1, right: 1, bottom: 1, top: 1 });
    grid.add("here", { left: 1, right: 1, bottom: 1, top: 1 });
    expect(grid.some({ left: 0, right: 2, bottom: 0, top: 2 }, () => true)).toBe(true);
    expect(cellGrid({ left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity }).some(bounds, () => true)).toBe(false);
  });
});
