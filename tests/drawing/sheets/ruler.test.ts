import { describe, expect, it } from "vitest";
import { boundsOf, boundsOfItem } from "../../../src/drawing/bounds";
import { RULER_REACH, RULER_TAIL, ruler, rulerLength } from "../../../src/drawing/sheets/ruler";

const lines = (direction: "level" | "upright") => ruler({ x: 20, y: 30 }, 100, direction).filter(({ kind }) => kind === "path").slice(1).map(boundsOfItem);
const numbers = (length: number) => ruler({ x: 0, y: 0 }, length, "level").flatMap((item) => (item.kind === "text" ? [item.text] : []));

describe("ruler", () => {
  it("has a tick every millimetre over 100 mm, on both axes", () => {
    expect(lines("level").filter(({ top }) => top > 30).map(({ left }) => left)).toEqual(Array.from({ length: 101 }, (_, i) => 20 + i));
    expect(lines("upright").filter(({ left }) => left < 20).map(({ bottom }) => bottom)).toEqual(Array.from({ length: 101 }, (_, i) => 30 + i));
  });

  it("has a tick every eighth of an inch over the whole inches within it on its other side", () => {
    const places = lines("level").filter(({ bottom }) => bottom < 30).map(({ left }) => left - 20);
    expect(places).toHaveLength(25);
    expect(places.at(-1)).toBeCloseTo(3 * 25.4, 12);
  });

  it("has a line that ends at its last millimetre, so that both ends can be measured", () => {
    for (const length of [60, 100, 150, 240]) {
      const all = ruler({ x: 0, y: 0 }, length, "level").filter(({ kind }) => kind === "path").map(boundsOfItem);
      expect(Math.max(...all.map(({ right }) => right))).toBe(length);
    }
  });

  it("numbers the tens and the inches and names both", () => {
    expect(numbers(100)).toEqual(["0", "10", "20", "30", "40", "50", "60", "70", "80", "90", "100", "0", "1", "2", "3", "mm", "in"]);
    expect(numbers(150).slice(-3)).toEqual(["5", "mm", "in"]);
  });

  it("keeps within the room it is said to take", () => {
    const { right, bottom, top } = boundsOf(ruler({ x: 0, y: 0 }, 100, "level"));
    expect(right).toBeLessThanOrEqual(100 + RULER_TAIL);
    expect(Math.max(top, -bottom)).toBeLessThanOrEqual(RULER_REACH);
  });
});

describe("rulerLength", () => {
  it("is the longest whole ten that leaves the rest", () => {
    expect(rulerLength(137, 100, 45)).toBe(90);
    expect(rulerLength(500, 100, 45)).toBe(100);
    expect(rulerLength(40, 100, 45)).toBe(0);
  });
});
