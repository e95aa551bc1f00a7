import { describe, expect, it } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds";
import type { Item, PathItem } from "../../../src/drawing/display";
import { tilesOver, windowsAlong } from "../../../src/drawing/sheets/tiles";
import { arcStroke, polygon, stroke } from "../../../src/drawing/strokes";

const cut = (...paths: PathItem[]) => ({ art: paths, bounds: boundsOf(paths), outlines: paths.map(({ segments }) => segments) });
const drawn = (...art: Item[]) => ({ art, bounds: boundsOf(art), outlines: [] });
const box = (width: number, height: number, x = 0, y = 0) => polygon("outline", [{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }]);
const names = (tiles: readonly { name: string }[]) => tiles.map(({ name }) => name);

describe("tilesOver", () => {
  it("takes one tile for what fits one", () => {
    expect(names(tilesOver(cut(box(90, 90)), 100, 100, 10))).toEqual(["A1"]);
  });

  it("covers everything, neighbours sharing the overlap, rows lettered from the top", () => {
    const tiles = tilesOver(cut(box(250, 250)), 100, 150, 10);
    expect(names(tiles)).toEqual(["A1", "A2", "A3", "B1", "B2", "B3"]);
    const [a, b] = tiles;
    expect((a?.window.right ?? 0) - (b?.window.left ?? 0)).toBeCloseTo(10, 12);
    expect(Math.min(...tiles.map(({ window }) => window.left))).toBeLessThanOrEqual(0);
    expect(Math.max(...tiles.map(({ window }) => window.right))).toBeGreaterThanOrEqual(250);
  });

  it("keeps the tiles inside a pattern though nothing is drawn on them", () => {
    expect(tilesOver(cut(box(280, 280)), 100, 100, 10)).toHaveLength(9);
  });

  it("leaves out tiles with nothing drawn and nothing to cut on them", () => {
    expect(names(tilesOver(drawn(stroke("station", { x: 0, y: 0 }, { x: 280, y: 280 })), 100, 100, 10))).not.toContain("A1");
    const ring = { ...cut(arcStroke("outline", { x: 0, y: 0 }, 200, 0, 2 * Math.PI), arcStroke("opening", { x: 0, y: 0 }, 195, 0, 2 * Math.PI)) };
    expect(tilesOver(ring, 100, 100, 10).length).toBeLessThan(25);
  });

  it("shifts the first tile to use fewer of them", () => {
    // Two squares of 50 with 115 between: laid evenly or from the left, a row of three takes a sheet for the end of each.
    const apart = cut(box(50, 50), box(50, 50, 165, 165));
    const tiles = tilesOver(apart, 100, 100, 10);
    expect(tiles).toHaveLength(2);
  });

  it("shows every place of the drawing on some tile before its trim lines", () => {
    const { art, bounds, outlines } = cut(arcStroke("outline", { x: 0, y: 0 }, 333, 0, 2 * Math.PI));
    const tiles = tilesOver({ art, bounds, outlines }, 170, 250, 10);
    for (let i = 0; i < 3600; i++) {
      const angle = (i * Math.PI) / 1800, x = 333 * Math.cos(angle), y = 333 * Math.sin(angle);
      expect(tiles.some(({ window }) => x >= window.left && x <= window.right && y >= window.bottom && y <= window.top)).toBe(true);
    }
  });

  it("runs its trim lines beside lettering where that costs no tile", () => {
    const { art, bounds, outlines } = cut(box(250, 90));
    const letters: Item[] = Array.from({ length: 13 }, (_, i) => ({ kind: "text", pen: "lettering", text: "8", height: 3.5, align: "middle", turn: 0, at: { x: 5 + 20 * i, y: 40 } }));
    const tiles = tilesOver({ art: [...art, ...letters], bounds, outlines }, 100, 100, 10);
    expect(tiles).toHaveLength(3);
    const trims = tiles.slice(1).map(({ window }) => window.left + 5);
    for (const trim of trims) for (const letter of letters) {
      const { left, right } = boundsOf([letter]);
      expect(trim < left || trim > right, String(trim)).toBe(true);
    }
  });

  it("runs its trim lines beside straight lines where that costs no tile", () => {
    const { art, bounds, outlines } = cut(box(180, 90));
    const middle = stroke("centre line", { x: 93, y: 0 }, { x: 93, y: 90 });
    for (const all of [art, [...art, middle]]) {
      const tiles = tilesOver({ art: all, bounds, outlines }, 100, 100, 10);
      expect(tiles).toHaveLength(2);
      const trim = (tiles[1]?.window.left ?? 0) + 5;
      expect(Math.abs(trim - 93) > 1, String(trim)).toBe(all !== art);
    }
  });

  it("leaves room for a neighbour's name between a trim line and straight lines where that costs no tile", () => {
    const { art, bounds, outlines } = cut(box(180, 90));
    for (const x of [88, 92]) {
      const line = stroke("centre line", { x, y: 0 }, { x, y: 90 });
      const tiles = tilesOver({ art: [...art, line], bounds, outlines }, 100, 100, 10);
      expect(tiles).toHaveLength(2);
      expect(Math.abs(x - ((tiles[1]?.window.left ?? NaN) + 5))).toBeGreaterThan(5.1);
    }
  });

  it("refuses an overlap of half a window", () => {
    expect(() => tilesOver(cut(box(90, 90)), 100, 100, 50)).toThrow(RangeError);
  });
});

describe("windowsAlong", () => {
  it("counts windows that share the overlap", () => {
    expect(windowsAlong(100, 100, 10)).toBe(1);
    expect(windowsAlong(190, 100, 10)).toBe(2);
    expect(windowsAlong(191, 100, 10)).toBe(3);
  });
});
