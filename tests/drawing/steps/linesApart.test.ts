import { describe, expect, it } from "vitest";
import { boundsOfItem } from "../../../src/drawing/bounds";
import type { Item } from "../../../src/drawing/display";
import { linesApart } from "../../../src/drawing/steps/linesApart";
import { stroke } from "../../../src/drawing/strokes";

const level = (y: number, from: number, to: number) => stroke("projection", { x: from, y }, { x: to, y });
const upright = (x: number, from: number, to: number) => stroke("projection", { x, y: from }, { x, y: to });
const mark = (x: number, y: number): Item => ({ kind: "circle", pen: "projection", centre: { x, y }, radius: 0.5 });
const spans = (items: readonly Item[]) => items.map(boundsOfItem).map(({ left, right, bottom, top }) => [left, right, bottom, top]);

describe("linesApart", () => {
  it("leaves lines of 0.7 mm and more apart as they are (the least distance of ISO 128)", () => {
    const lines = [level(0, 0, 10), level(0.7, 0, 10), level(-0.9, 2, 8), upright(0, 0, 10), upright(0.7, 0, 10)];
    expect(linesApart(lines)).toEqual(lines);
  });

  it("leaves out a line nearer to an earlier one, beside which it runs all along", () => {
    expect(linesApart([level(0, 0, 10), level(0.5, 2, 8), upright(3, 0, 4), upright(3.3, 0, 4)])).toEqual([level(0, 0, 10), upright(3, 0, 4)]);
  });

  it("draws what of a line runs on beyond the earlier one", () => {
    expect(spans(linesApart([level(0, 0, 10), level(0.5, 5, 20), upright(3, 10, 0), upright(3, -5, 30)]))).toEqual([[0, 10, 0, 0], [10, 20, 0.5, 0.5], [3, 3, 0, 10], [3, 3, -5, 0], [3, 3, 10, 30]]);
  });

  it("leaves no crumb, and slanted lines and outlines as they are", () => {
    const slanted = [stroke("projection", { x: 0, y: 0 }, { x: 5, y: 1 }), stroke("projection", { x: 0, y: 0.2 }, { x: 5, y: 1.2 })];
    expect(linesApart([level(0, 0, 10), level(0.5, 0, 10.4), ...slanted])).toEqual([level(0, 0, 10), ...slanted]);
  });

  it("leaves ticks as they are, and lines beside them", () => {
    const ticks = [level(0, 0, 2.5), level(0.3, 0, 2.5), level(0.1, 0, 10)];
    expect(linesApart(ticks)).toEqual(ticks);
  });

  it("draws one of the marks of points that fall on one another", () => {
    expect(linesApart([mark(0, 0), mark(0.3, 0.3), mark(2, 0)])).toEqual([mark(0, 0), mark(2, 0)]);
  });
});
