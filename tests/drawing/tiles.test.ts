import { describe, expect, it } from "vitest";
import { boundsOf } from "../../src/drawing/bounds";
import { polygon, stroke } from "../../src/drawing/strokes";
import { OVERLAP, tilesOver } from "../../src/drawing/tiles";

const square = (size: number) => [polygon("outline", [{ x: 0, y: 0 }, { x: size, y: 0 }, { x: size, y: size }, { x: 0, y: size }])];

describe("tilesOver", () => {
  it("takes one tile for what fits one", () => {
    expect(tilesOver(square(90), boundsOf(square(90)), 100, 100).map(({ name }) => name)).toEqual(["A1"]);
  });

  it("covers everything, neighbours sharing the overlap, rows lettered from the top", () => {
    const tiles = tilesOver(square(250), boundsOf(square(250)), 100, 150);
    expect(tiles.map(({ name }) => name)).toEqual(["A1", "A2", "A3", "B1", "B2", "B3"]);
    const [a, b] = tiles;
    expect((a?.window.right ?? 0) - (b?.window.left ?? 0)).toBeCloseTo(OVERLAP, 12);
    expect(Math.min(...tiles.map(({ window }) => window.left))).toBeLessThanOrEqual(0);
    expect(Math.max(...tiles.map(({ window }) => window.right))).toBeGreaterThanOrEqual(250);
  });

  it("keeps the tiles inside a pattern though nothing is drawn on them, and leaves out blank ones", () => {
    expect(tilesOver(square(280), boundsOf(square(280)), 100, 100)).toHaveLength(9);
    const diagonal = [stroke("station", { x: 0, y: 0 }, { x: 280, y: 280 })];
    expect(tilesOver(diagonal, boundsOf(diagonal), 100, 100).map(({ name }) => name)).not.toContain("A1");
  });
});
