import { describe, expect, it } from "vitest";
import type { Vec2 } from "../../../src/core/index";
import { clippedChain, clippedLoop } from "../../../src/drawing/pictorial/pictorialClip";
import { expectClose } from "../../support/approximate";

/** A comb with three teeth, and a square: clipped across the teeth the comb falls asunder. */
const comb = points([0, 0], [10, 0], [10, 5], [8, 5], [8, 1], [6, 1], [6, 5], [4, 5], [4, 1], [2, 1], [2, 5], [0, 5]);
const square = points([1, 1], [3, 1], [3, 3], [1, 3]);
const borders = [-5, 0, 0.5, 1, 2.7, 5, 6, 9.99, 10, 12];
const stretches = borders.slice(1).map((to, i) => ({ from: borders[i]!, to }));

function points(...corners: [number, number][]): Vec2[] {
  return corners.map(([x, y]) => ({ x, y }));
}
const area = (loop: readonly Vec2[]) => loop.reduce((sum, { x, y }, i) => sum + ((loop.at(i - 1)?.x ?? x) * y - x * (loop.at(i - 1)?.y ?? y)) / 2, 0);
const length = (chain: readonly Vec2[]) => chain.slice(1).reduce((sum, { x, y }, i) => sum + Math.hypot(x - chain[i]!.x, y - chain[i]!.y), 0);

describe("clippedLoop", () => {
  it("shares the area among the stretches of a partition", () => {
    for (const loop of [comb, square]) {
      expectClose(stretches.reduce((sum, stretch) => sum + area(clippedLoop(loop, stretch)), 0), area(loop), 1e-12, "area");
    }
  });

  it("keeps within the stretch", () => {
    for (const { from, to } of stretches) {
      for (const { x } of clippedLoop(comb, { from, to })) expect(x >= from - 1e-12 && x <= to + 1e-12).toBe(true);
    }
  });

  it("leaves nothing of a loop beside the stretch, and all of one within it", () => {
    expect(clippedLoop(square, { from: 4, to: 9 })).toEqual([]);
    expect(clippedLoop(square, { from: 0, to: 9 })).toEqual(square);
  });
});

describe("clippedChain", () => {
  it("shares the length among the stretches of a partition, but for what runs along a border", () => {
    const slanting = points([0, 0], [10, 3], [2.2, 5], [9, 9], [9.5, -4]);
    expectClose(stretches.flatMap((stretch) => clippedChain(slanting, stretch)).reduce((sum, run) => sum + length(run), 0), length(slanting), 1e-12, "length");
  });

  it("gives one run for each time the chain passes through", () => {
    expect(clippedChain(points([0, 0], [10, 1], [0, 2], [10, 3]), { from: 4, to: 6 })).toHaveLength(3);
    expect(clippedChain(points([0, 0], [3, 1]), { from: 4, to: 6 })).toEqual([]);
  });
});
