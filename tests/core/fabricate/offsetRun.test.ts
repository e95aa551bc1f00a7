import { describe, expect, it } from "vitest";
import { linesThrough } from "../../../src/core/geometry/chain";
import { offsetRun } from "../../../src/core/fabricate/offsetRun";
import { expectClose } from "../../support/approximate";

const run = (...points: [number, number][]) => linesThrough(points.map(([x, y]) => ({ x, y })));
const ends = (moved: ReturnType<typeof offsetRun>) => (moved.ok ? moved.segments.map(({ kind, to }) => [kind, Math.round(to.x * 1e6) / 1e6, Math.round(to.y * 1e6) / 1e6]) : moved);

describe("offsetRun", () => {
  it("offsetRun rounds a corner that opens about the corner", () =>
    expect(ends(offsetRun(run([0, 0], [10, 0], [10, 10]), 2, 0.01))).toEqual([["line", 10, -2], ["arc", 12, 0], ["line", 12, 10]]));
  it("offsetRun cuts a corner that closes where the sides meet", () =>
    expect(ends(offsetRun(run([0, 0], [10, 0], [10, -10]), 2, 0.01))).toEqual([["line", 8, -2], ["line", 8, -10]]));
  it("offsetRun swallows a stretch too short between two closing corners", () => {
    const moved = offsetRun(run([0, 0], [10, 0], [10.5, -0.5], [10.5, -10]), 4, 0.01);
    expect(ends(moved)).toEqual([["line", 6.5, -4], ["line", 6.5, -10]]);
  });
  it("offsetRun says at which corner a side is swallowed whole", () => {
    const moved = offsetRun(run([0, 0], [10, 0], [10, -1]), 4, 0.01);
    if (moved.ok) throw new Error("not refused");
    expectClose(Math.hypot(moved.at.x - 10, moved.at.y), 0, 1e-12);
  });
});
