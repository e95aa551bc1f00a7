import { describe, expect, it } from "vitest";
import { clearSpace } from "../../src/drawing/clearSpace";
import { clearedFigures } from "../../src/drawing/dimension/clearedFigures";
import type { TextItem } from "../../src/drawing/display";
import { arcStroke, stroke } from "../../src/drawing/strokes";

const box = (left: number, bottom: number) => ({ left, right: left + 2, bottom, top: bottom + 2 });
const figure: TextItem = { kind: "text", pen: "lettering", at: { x: 0, y: 0 }, text: "90", height: 3.5, align: "middle", turn: 0 };

describe("clearSpace", () => {
  it("finds a box free until a line runs through it, end or no end inside", () => {
    const space = clearSpace(0);
    space.take([stroke("dimension", { x: -10, y: 1 }, { x: 10, y: 1.5 })]);
    expect(space.isFree(box(0, 0))).toBe(false);
    expect(space.isFree(box(0, 3))).toBe(true);
    expect(space.isFree(box(20, 0))).toBe(true);
  });

  it("keeps the margin", () => {
    const space = clearSpace(1);
    space.take([stroke("dimension", { x: -10, y: 0 }, { x: 10, y: 0 })]);
    expect([0.5, 1.5].map((y) => space.isFree(box(0, y)))).toEqual([false, true]);
  });

  it("follows an arc, not its chord", () => {
    const space = clearSpace(0);
    space.take([arcStroke("dimension", { x: 0, y: 0 }, 10, 0, Math.PI)]);
    expect(space.isFree({ left: -1, right: 1, bottom: 9, top: 11 })).toBe(false);
    expect(space.isFree({ left: -1, right: 1, bottom: -1, top: 1 })).toBe(true);
  });

  it("knows lines that run through figures", () => {
    const space = clearSpace(0);
    space.take([figure]);
    expect(space.meetsFigures([stroke("dimension", { x: -10, y: 1 }, { x: 10, y: 1 })])).toBe(true);
    expect(space.meetsFigures([stroke("dimension", { x: -10, y: 9 }, { x: 10, y: 9 })])).toBe(false);
  });
});

describe("clearedFigures", () => {
  it("marks the figures that a line runs through, no others", () => {
    const line = stroke("dimension", { x: -10, y: 1 }, { x: 10, y: 1 });
    const away: TextItem = { ...figure, at: { x: 0, y: 30 } };
    expect(clearedFigures([line, figure, away])).toEqual([line, { ...figure, clear: true }, away]);
  });
});
