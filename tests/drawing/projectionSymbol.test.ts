import { describe, expect, it } from "vitest";
import { boundsOfItem } from "../../src/drawing/bounds";
import { projectionSymbol } from "../../src/drawing/projectionSymbol";

/** Heights of the frustum's end beside the circles and of the other, and the circles' diameters. */
function measures(projection: "first" | "third") {
  const items = projectionSymbol(projection, { x: 0, y: 0 });
  const corners = items.flatMap((item) => (item.kind === "path" && item.closed ? item.segments.map(({ from }) => from) : []));
  const circles = items.flatMap((item) => (item.kind === "circle" ? [item] : []));
  const right = Math.max(...corners.map(({ x }) => x));
  const spread = (side: boolean) => {
    const ys = corners.filter(({ x }) => (x === right) === side).map(({ y }) => y);
    return Math.max(...ys) - Math.min(...ys);
  };
  expect(Math.min(...circles.map((circle) => boundsOfItem(circle).left))).toBeGreaterThan(right);
  return { beside: spread(true), away: spread(false), circles: circles.map(({ radius }) => 2 * radius), length: right - Math.min(...corners.map(({ x }) => x)) };
}

describe("projectionSymbol", () => {
  it("has its circles beside the large end in first angle", () => {
    expect(measures("first")).toEqual({ beside: 10, away: 5, circles: [10, 5], length: 10 });
  });

  it("has its circles beside the small end in third angle", () => {
    expect(measures("third")).toEqual({ beside: 5, away: 10, circles: [10, 5], length: 10 });
  });
});
