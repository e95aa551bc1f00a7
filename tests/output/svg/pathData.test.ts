import { describe, expect, it } from "vitest";
import { arrowheadData, pathData } from "../../../src/output/svg/pathData";

const from = { x: 1, y: 0 };

describe("pathData", () => {
  it("flips y and keeps cubics", () => {
    const segment = { kind: "cubic", from, c1: { x: 1, y: 1 }, c2: { x: 2, y: 2 }, to: { x: 3, y: 3 } } as const;
    expect(pathData({ segments: [segment], closed: false })).toBe("M1 0C1 -1 2 -2 3 -3");
  });

  it("keeps arcs: an anticlockwise quarter of the sheet sweeps the same way on the screen", () => {
    const quarter = { kind: "arc", from, to: { x: 0, y: 1 }, centre: { x: 0, y: 0 }, anticlockwise: true } as const;
    expect(pathData({ segments: [quarter], closed: false })).toBe("M1 0A1 1 0 0 0 0 -1");
    expect(pathData({ segments: [{ ...quarter, anticlockwise: false }], closed: false })).toBe("M1 0A1 1 0 1 1 0 -1");
  });

  it("draws a whole circle as two halves", () => {
    const circle = { kind: "arc", from, to: from, centre: { x: 0, y: 0 }, anticlockwise: true } as const;
    expect(pathData({ segments: [circle], closed: true })).toBe("M1 0A1 1 0 0 0 -1 0A1 1 0 0 0 1 0Z");
  });

  it("closes a polygon without drawing its last side twice", () => {
    const corners = [from, { x: 2, y: 0 }, { x: 2, y: 1 }];
    const segments = corners.map((corner, i) => ({ kind: "line" as const, from: corner, to: corners[(i + 1) % 3] ?? corner }));
    expect(pathData({ segments, closed: true })).toBe("M1 0L2 0L2 -1Z");
  });

  it("is empty for no segments, and refuses what is not a number", () => {
    expect(pathData({ segments: [], closed: false })).toBe("");
    expect(() => pathData({ segments: [{ kind: "line", from, to: { x: NaN, y: 0 } }], closed: false })).toThrow(RangeError);
  });
});

describe("arrowheadData", () => {
  it("points its tip and is about 15 degrees wide", () => {
    expect(arrowheadData({ kind: "arrowhead", pen: "dimension", tip: { x: 10, y: 0 }, direction: 0, length: 3 })).toBe("M10 0L7 -0.395L7 0.395Z");
  });
});
