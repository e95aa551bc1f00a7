import { describe, expect, it } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds";
import { growBox } from "../../../src/drawing/box";
import { clearSpace } from "../../../src/drawing/clearSpace";
import { tileMap } from "../../../src/drawing/sheets/tileMap";
import { tilesOver } from "../../../src/drawing/sheets/tiles";
import { arcStroke, polygon } from "../../../src/drawing/strokes";
import { collisions, textsOf } from "../../support/collisions";

const box = { left: 20, right: 190, bottom: 150, top: 280 };

/** A blank of this size with a round opening, on sheets of 170 × 250 that share 10. */
function mapOf(width: number, height: number, within = box) {
  const art = [polygon("outline", [{ x: 0, y: 0 }, { x: width, y: 0 }, { x: width, y: height }, { x: 0, y: 0.6 * height }]), arcStroke("opening", { x: width / 2, y: height / 3 }, Math.min(width, height) / 8, 0, 2 * Math.PI)];
  const part = { art, bounds: growBox(boundsOf(art), 2), outlines: art.map(({ segments }) => segments) };
  const tiles = tilesOver(part, 170, 250, 10);
  return { tiles, items: tileMap(part, tiles, within, 10) };
}

describe("tileMap", () => {
  it("names every sheet, no name on the pattern, on a border or on another name", () => {
    for (const [width, height] of [[300, 200], [700, 500], [1200, 900], [1800, 1600]] as const) {
      const { tiles, items } = mapOf(width, height);
      expect(textsOf(items).map(({ text }) => text)).toEqual(tiles.map(({ name }) => name));
      expect(textsOf(items).some(({ clear }) => clear)).toBe(false);
      expect(collisions(items)).toEqual([]);
    }
  });

  it("writes smaller on small sheets, and names only some of very many, never over the pattern", () => {
    const heights = (width: number) => Math.max(...textsOf(mapOf(width, width).items).map(({ height }) => height));
    expect(heights(700)).toBe(3.5);
    expect(heights(2400)).toBeLessThan(3.5);
    const { tiles, items } = mapOf(4000, 4000, { left: 20, right: 100, bottom: 150, top: 190 });
    const names = textsOf(items);
    expect(names.length).toBeGreaterThan(3);
    expect(names.length).toBeLessThan(tiles.length / 3);
    const pattern = clearSpace(0);
    pattern.take(items.filter((item) => "pen" in item && item.pen === "outline"));
    for (const name of names) expect(pattern.isFree(boundsOf([name])), name.text).toBe(true);
    for (const [i, name] of names.entries()) for (const other of names.slice(i + 1)) expect(overlap(boundsOf([name]), boundsOf([other]))).toBe(false);
  });

  it("keeps inside its box, the pattern inside the borders of the sheets", () => {
    const { items } = mapOf(700, 500);
    const whole = boundsOf(items), pattern = boundsOf(items.filter((item) => "pen" in item && item.pen === "outline"));
    for (const side of ["left", "bottom"] as const) {
      expect(whole[side]).toBeGreaterThanOrEqual(box[side] - 1e-9);
      expect(pattern[side]).toBeGreaterThan(whole[side]);
    }
    for (const side of ["right", "top"] as const) {
      expect(whole[side]).toBeLessThanOrEqual(box[side] + 1e-9);
      expect(pattern[side]).toBeLessThan(whole[side]);
    }
  });

  it("draws a border that two sheets share once, so that its dashes show", () => {
    const { items } = mapOf(700, 500);
    const lines = items.filter((item) => "pen" in item && item.pen === "trim").map((item) => boundsOf([item]));
    for (const [i, one] of lines.entries()) for (const other of lines.slice(i + 1)) expect(lengthShared(one, other)).toBeLessThan(1e-6);
  });
});

type Sides = ReturnType<typeof boundsOf>;

function overlap(a: Sides, b: Sides): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

/** Of two straight lines along the axes: how long they run on one another. */
function lengthShared(a: Sides, b: Sides): number {
  const x = Math.min(a.right, b.right) - Math.max(a.left, b.left), y = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom);
  if (x < -1e-6 || y < -1e-6) return 0;
  const level = (one: Sides) => one.top - one.bottom < 1e-9;
  return level(a) !== level(b) ? 0 : Math.max(x, y);
}
