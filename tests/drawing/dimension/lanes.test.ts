import { describe, expect, it } from "vitest";
import { boundsOfItem } from "../../../src/drawing/bounds";
import type { Item, PathItem, TextItem } from "../../../src/drawing/display";
import { type LinearDimension, laneDimensions } from "../../../src/drawing/dimension/lanes";
import { metricsFor } from "../../../src/drawing/metrics";

const METRICS = metricsFor(3.5);
const BODY = { left: 0, right: 50, bottom: 0, top: 100 };
const height = (z: number, from = 0): LinearDimension => ({ side: "left", from: { x: 0, y: from }, to: { x: 0, y: z }, text: String(z - from) });
const figures = (items: readonly Item[]) => items.filter((item): item is TextItem => item.kind === "text");
const upright = (items: readonly Item[]) => items.filter((item): item is PathItem => item.kind === "path").map(boundsOfItem).filter(({ left, right }) => right - left < 1e-9);

describe("laneDimensions", () => {
  it("puts the first line 10 mm off the view and the next 8 mm farther, short ones first", () => {
    const lines = upright(laneDimensions([height(90), height(40)], BODY, METRICS)).sort((a, b) => b.left - a.left);
    expect(lines.map(({ left, top }) => [left, top])).toEqual([[-10, 40], [-18, 90]]);
  });

  it("lets dimensions share a lane that do not overlap", () => {
    expect(new Set(upright(laneDimensions([height(30), height(90, 50)], BODY, METRICS)).map(({ left }) => left))).toEqual(new Set([-10]));
  });

  it("draws the extension line of a common place once, out past the farthest line", () => {
    const level = laneDimensions([height(90), height(40)], BODY, METRICS).filter((item): item is PathItem => item.kind === "path").map(boundsOfItem)
      .filter(({ bottom, top }) => top - bottom < 1e-9 && bottom === 0);
    expect(level).toHaveLength(1);
    expect(level[0]).toMatchObject({ left: -20, right: 0 });
  });

  it("stands a figure that has no room beyond the line", () => {
    const [figure] = figures(laneDimensions([{ side: "left", from: { x: 0, y: 0 }, to: { x: 0, y: 4 }, text: "1234.56" }], BODY, METRICS));
    expect(figure && boundsOfItem(figure).bottom).toBeGreaterThan(4);
  });

  it("moves a figure aside for an extension line that passes its lane", () => {
    const items = laneDimensions([height(70, 30), height(50)], BODY, METRICS);
    const [first] = figures(items).filter(({ text }) => text === "40");
    const box = first && boundsOfItem(first);
    expect(box && (box.bottom > 50 || box.top < 50)).toBe(true);
  });
});
