import { describe, expect, it } from "vitest";
import type { Segment } from "../../../src/core/index";
import { chainsOf } from "../../../src/drawing/view/chain";

const line = (x0: number, y0: number, x1: number, y1: number): Segment[] => [{ kind: "line", from: { x: x0, y: y0 }, to: { x: x1, y: y1 } }];

describe("chainsOf", () => {
  it("joins pieces end to end in either direction and turns them round where need be", () => {
    const [chain, ...rest] = chainsOf([line(1, 0, 1, 1), line(0, 0, 1, 0), line(0, 2, 1, 1)], 1e-9);
    expect(rest).toEqual([]);
    expect(chain?.closed).toBe(false);
    const ends = [chain?.segments[0]?.from, chain?.segments.at(-1)?.to];
    expect(ends).toContainEqual({ x: 0, y: 0 });
    expect(ends).toContainEqual({ x: 0, y: 2 });
    expect(chain?.segments).toHaveLength(3);
  });

  it("knows a closed chain", () => {
    expect(chainsOf([line(0, 0, 1, 0), line(1, 0, 1, 1), line(1, 1, 0, 0)], 1e-9).map(({ closed }) => closed)).toEqual([true]);
  });

  it("makes one line of lines that go on straight", () => {
    expect(chainsOf([line(0, 0, 1, 1), line(2, 2, 1, 1)], 1e-9).map(({ segments }) => segments.length)).toEqual([1]);
  });

  it("leaves apart what does not meet, and drops empty pieces", () => {
    expect(chainsOf([line(0, 0, 1, 0), [], line(5, 5, 6, 5)], 1e-9)).toHaveLength(2);
  });
});
