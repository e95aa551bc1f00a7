import { describe, expect, it } from "vitest";
import { type Arc, arcSweep } from "../../../src/core/index";
import { mergeSegments } from "../../../src/drawing/view/mergeSegments";

const arc = (from: number, to: number, radius = 5): Arc => ({
  kind: "arc", centre: { x: 1, y: 2 }, anticlockwise: to > from,
  from: { x: 1 + radius * Math.cos(from), y: 2 + radius * Math.sin(from) }, to: { x: 1 + radius * Math.cos(to), y: 2 + radius * Math.sin(to) },
});

describe("mergeSegments", () => {
  it("makes one arc of arcs that go on round one centre", () => {
    const [joined, ...rest] = mergeSegments([arc(0, 1), arc(1, 2.5)], 1e-9);
    expect(rest).toEqual([]);
    if (joined?.kind !== "arc") throw new Error("not an arc");
    expect(arcSweep(joined).sweep).toBeCloseTo(2.5, 12);
  });

  it("closes a whole circle exactly", () => {
    const [joined] = mergeSegments([arc(0, 3), arc(3, 2 * Math.PI)], 1e-9);
    if (joined?.kind !== "arc") throw new Error("not an arc");
    expect(joined.to).toEqual(joined.from);
  });

  it("keeps arcs of other radius or sense, and lines round a corner", () => {
    expect(mergeSegments([arc(0, 1), arc(1, 2, 6)], 1e-9)).toHaveLength(2);
    expect(mergeSegments([arc(0, 1), arc(1, 0)], 1e-9)).toHaveLength(2);
    const corner = { x: 1, y: 0 };
    expect(mergeSegments([{ kind: "line", from: { x: 0, y: 0 }, to: corner }, { kind: "line", from: corner, to: { x: 1, y: 1 } }], 1e-9)).toHaveLength(2);
  });

  it("does not let a line swallow one that runs back over it", () => {
    const end = { x: 2, y: 0 };
    expect(mergeSegments([{ kind: "line", from: { x: 0, y: 0 }, to: end }, { kind: "line", from: end, to: { x: 1, y: 0 } }], 1e-9)).toHaveLength(2);
  });
});
