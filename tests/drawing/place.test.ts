import { describe, expect, it } from "vitest";
import { fromSheet, onSheet } from "../../src/drawing/place";

describe("onSheet", () => {
  it("scales and moves", () => {
    expect(onSheet({ origin: { x: 10, y: 20 }, scale: 2, turn: 0 }, { x: 3, y: 4 })).toEqual({ x: 16, y: 28 });
  });

  it("tips what belongs to a lying pipe over to the right: up becomes right, right becomes down", () => {
    const place = { origin: { x: 0, y: 0 }, scale: 1, turn: -90 } as const;
    expect(onSheet(place, { x: 0, y: 5 })).toEqual({ x: 5, y: 0 });
    expect(onSheet(place, { x: 5, y: 0 })).toEqual({ x: 0, y: -5 });
  });

  it("is undone by fromSheet", () => {
    for (const turn of [0, -90] as const) {
      const place = { origin: { x: 7, y: -3 }, scale: 0.25, turn };
      const back = fromSheet(place, onSheet(place, { x: 12, y: 34 }));
      expect(back.x).toBeCloseTo(12, 12);
      expect(back.y).toBeCloseTo(34, 12);
    }
  });
});
