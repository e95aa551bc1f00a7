import { describe, expect, it } from "vitest";
import { boundsOfItem } from "../../src/drawing/bounds";
import { INCHES, MILLIMETRES, ruler } from "../../src/drawing/ruler";

const ticks = (direction: "level" | "upright", scale = MILLIMETRES) => ruler({ x: 20, y: 30 }, scale, direction).filter(({ kind }) => kind === "path").slice(1).map(boundsOfItem);

describe("ruler", () => {
  it("has a tick every millimetre over 100 mm, on both axes", () => {
    expect(ticks("level").map(({ left }) => left)).toEqual(Array.from({ length: 101 }, (_, i) => 20 + i));
    expect(ticks("upright").map(({ bottom }) => bottom)).toEqual(Array.from({ length: 101 }, (_, i) => 30 + i));
  });

  it("has a tick every eighth of an inch over 4 inches", () => {
    const places = ticks("level", INCHES).map(({ left }) => left - 20);
    expect(places).toHaveLength(33);
    expect(places.at(-1)).toBeCloseTo(4 * 25.4, 12);
  });

  it("numbers the tens and the inches", () => {
    const numbers = (scale: typeof MILLIMETRES) => ruler({ x: 0, y: 0 }, scale, "level").flatMap((item) => (item.kind === "text" ? [item.text] : []));
    expect(numbers(MILLIMETRES)).toEqual(["0", "10", "20", "30", "40", "50", "60", "70", "80", "90", "100"]);
    expect(numbers(INCHES)).toEqual(["0″", "1″", "2″", "3″", "4″"]);
  });
});
