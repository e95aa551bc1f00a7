import { describe, expect, it } from "vitest";
import { firstCrossing } from "./crossings";

const square = [{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 10, y: 10 }, { x: 0, y: 10 }];

describe("firstCrossing", () => {
  it("finds none in a square", () => expect(firstCrossing([square], 1e-9)).toBeNull());
  it("finds the crossing of a bow", () => expect(firstCrossing([[square[0]!, square[2]!, square[1]!, square[3]!]], 1e-9)).not.toBeNull());
  it("finds where two loops cross", () => {
    const moved = square.map(({ x, y }) => ({ x: x + 3, y: y + 4 }));
    expect(firstCrossing([square, moved], 1e-9)?.loops).toEqual([0, 1]);
  });
  it("does not count loops that touch along a side", () => {
    const beside = square.map(({ x, y }) => ({ x: x + 10, y }));
    expect(firstCrossing([square, beside], 1e-9)).toBeNull();
  });
  it("does not count a corner that touches a side", () => {
    const below = [{ x: 5, y: 0 }, { x: 7, y: -3 }, { x: 3, y: -3 }];
    expect(firstCrossing([square, below], 1e-9)).toBeNull();
  });
  it("finds a long piece that crosses many short ones", () => {
    const teeth = Array.from({ length: 200 }, (_, index) => ({ x: index / 2, y: (index % 2) + 1 }));
    const spike = [{ x: 50, y: -40 }, { x: 51, y: 60 }, { x: 52, y: -40 }];
    expect(firstCrossing([[...teeth, { x: 100, y: 90 }, { x: 0, y: 90 }], spike], 1e-9)).not.toBeNull();
  });
});
