import { describe, expect, it } from "vitest";
import { type ChainSegment, arcByRadius, linesThrough } from "../../../src/core/geometry/chain";
import { selfCrossing } from "../../../src/core/geometry/selfCrossing";
import { reverseSegment, segmentPoint } from "../../../src/core/geometry/segment";
import type { Vec2 } from "../../../src/core/geometry/vector";
import { randomSource } from "../../support/randomSource";

const NOISE = 1e-7;
const lines = (...points: (readonly [number, number])[]): ChainSegment[] => linesThrough(points.map(([x, y]) => ({ x, y })));

/** Whether two of many short straight pieces cross, by the signs of the areas their ends span; neighbours left aside. */
function piecesCross(chain: readonly ChainSegment[]): boolean {
  const points = chain.flatMap((segment) => {
    const steps = segment.kind === "line" ? 1 : 200;
    return Array.from({ length: steps }, (_, i) => segmentPoint(segment, i / steps));
  });
  points.push(chain.at(-1)!.to);
  const side = (a: Vec2, b: Vec2, c: Vec2): number => Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  for (let i = 1; i < points.length; i++) {
    for (let j = i + 2; j < points.length; j++) {
      const [a, b, c, d] = [points[i - 1]!, points[i]!, points[j - 1]!, points[j]!];
      if (side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)) return true;
    }
  }
  return false;
}

describe("selfCrossing", () => {
  it("of an open zigzag is null", () => expect(selfCrossing(lines([0, 0], [1, 1], [2, 0], [3, 1]), NOISE)).toBeNull());
  it("of a loop of lines names the two that cross", () => expect(selfCrossing(lines([0, 0], [4, 0], [4, 2], [2, -2]), NOISE)).toEqual([0, 2]));
  it("finds an end that only touches an earlier line", () => expect(selfCrossing(lines([0, 0], [4, 0], [4, 2], [2, 0]), NOISE)).toEqual([0, 2]));
  it("finds a line that runs back along the one before", () => expect(selfCrossing(lines([0, 0], [4, 0], [2, 0]), NOISE)).toEqual([0, 1]));
  it("finds lines that run along each other later on", () => expect(selfCrossing(lines([0, 0], [4, 0], [4, 1], [5, 0], [1, 0]), NOISE)).toEqual([0, 3]));
  it("finds a chain that closes on its own start", () => expect(selfCrossing(lines([0, 0], [4, 0], [4, 3], [0, 0]), NOISE)).toEqual([0, 2]));
  it("of lines that miss each other by more than the noise is null", () => expect(selfCrossing(lines([0, 0], [4, 0], [4, 2], [2, 2e-7]), NOISE)).toBeNull());
  it("finds an arc that crosses a line", () => {
    const chain = [...lines([-10, 0], [10, 0], [3, 3]), arcByRadius({ x: 3, y: 3 }, { x: -3, y: 3 }, 5, "right", true)];
    expect(selfCrossing(chain, NOISE)).toEqual([0, 2]);
  });
  it("finds a line that touches an arc from outside", () => {
    const arc = arcByRadius({ x: -5, y: 0 }, { x: 5, y: 0 }, 5, "right", false);
    expect(selfCrossing([arc, ...lines([5, 0], [9, 5], [-9, 5])], NOISE)).toEqual([0, 2]);
  });
  it("finds two arcs that cross", () => {
    const one = arcByRadius({ x: 0, y: 0 }, { x: 10, y: 0 }, 6, "right", true);
    const two = arcByRadius({ x: 10, y: 0 }, { x: 0, y: 4 }, 6, "left", true);
    expect(selfCrossing([one, two], NOISE)).toEqual([0, 1]);
  });
  it("finds an arc that runs back along the one before", () => {
    const one = arcByRadius({ x: 0, y: 0 }, { x: 10, y: 0 }, 6, "right", false);
    const back = { ...reverseSegment(one), to: segmentPoint(one, 0.4) };
    expect(selfCrossing([one, back], NOISE)).toEqual([0, 1]);
  });
  it("of arcs that go on smoothly is null, whatever their size", () => {
    for (const radius of [60, 1e3, 1e5, 1e7]) {
      const chain = [arcByRadius({ x: -50, y: 0 }, { x: 0, y: 20 }, radius, "left", false), arcByRadius({ x: 0, y: 20 }, { x: 50, y: 40 }, radius, "right", false)];
      expect(selfCrossing(chain, NOISE)).toBeNull();
    }
  });
  it("of a line that goes on smoothly in an arc is null", () => {
    const chain = [...lines([-9, 5], [0, 5]), arcByRadius({ x: 0, y: 5 }, { x: 5, y: 0 }, 5, "right", false), ...lines([5, 0], [5, -9])];
    expect(selfCrossing(chain, NOISE)).toBeNull();
  });
  it("agrees with many short straight pieces, on 150 random chains", () => {
    const source = randomSource(50);
    let crossed = 0;
    for (let n = 0; n < 150; n++) {
      const points = Array.from({ length: source.whole(3, 5) }, () => ({ x: source.between(-10, 10), y: source.between(-10, 10) }));
      const chain = linesThrough(points).map((line): ChainSegment => {
        const half = Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y) / 2;
        return source.chance(0.5) ? line : arcByRadius(line.from, line.to, half * source.between(1.1, 3), source.pick(["left", "right"]), source.chance(0.1));
      });
      const expected = piecesCross(chain);
      crossed += expected ? 1 : 0;
      expect(selfCrossing(chain, 1e-9) !== null, `chain ${n}`).toBe(expected);
    }
    expect(crossed).toBeGreaterThan(20);
  });
});
