import { beforeAll, describe, expect, it } from "vitest";
import { loadKernel, type Frame, type Kernel, type Outline } from "./kernel";
import { lateral } from "./lateral";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const front: Frame = { origin: [0, 0, 0], right: [1, 0, 0], up: [0, 0, 1], out: [0, -1, 0] };
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const relative = (value: number, wanted: number) => Math.abs(value - wanted) / wanted;

/** Everything above the line z = height + slope x. */
function above(height: number, slope: number, reach: number): Outline {
  return [{ to: [-reach, height - slope * reach] }, { to: [reach, height + slope * reach] }, { to: [reach, 9 * reach] }, { to: [-reach, 9 * reach] }];
}

function circle(radius: number, height: number): Outline {
  return [
    { to: [radius, height], via: [0, height - radius] },
    { to: [-radius, height], via: [0, height + radius] },
  ];
}

describe("the oracle kernel against closed forms", () => {
  it("gives the lateral area of a truncated cylinder, pi r (h1 + h2) (Building Trades Pocketbook, Mensuration)", () => {
    const solid = kernel.cut(kernel.cylinder(50, 300), kernel.extrusion(front, above(150, 1, 500), -500, 500));
    expect(relative(lateral(kernel.oc, solid, 50).area, 47123.88980384689)).toBeLessThan(1e-9);
  });

  it("gives the edge of a 45 degree mitre, 4 sqrt(2) E(1/2) with E from Abramowitz and Stegun table 17.1", () => {
    const solid = kernel.cut(kernel.cylinder(1, 6), kernel.extrusion(front, above(3, 1, 10), -10, 10));
    const edges = lateral(kernel.oc, solid, 1).edges;
    expect(edges).toHaveLength(2);
    expect(relative(sum(edges) - 2 * Math.PI, 7.640395578)).toBeLessThan(1e-9);
  });

  it("gives the area of a hole of radius 50 in a pipe of radius 100, 4 R² (E(1/4) - 3/4 K(1/4))", () => {
    const solid = kernel.cut(kernel.cylinder(100, 400), kernel.extrusion(front, circle(50, 200), 0, 200));
    expect(Math.abs(2 * Math.PI * 100 * 400 - lateral(kernel.oc, solid, 100).area - 8125.977729)).toBeLessThan(1e-3);
  });

  it("gives the perimeter of that hole, equal to the saddle edge of the branch", () => {
    const solid = kernel.cut(kernel.cylinder(100, 400), kernel.extrusion(front, circle(50, 200), 0, 200));
    const hole = sum(lateral(kernel.oc, solid, 100).edges) - 2 * 2 * Math.PI * 100;
    expect(relative(hole, 319.7244457)).toBeLessThan(1e-7);
  });

  it("leaves its own seam and the edges between lateral faces out", () => {
    const edges = lateral(kernel.oc, kernel.cylinder(10, 50), 10).edges;
    expect(edges).toHaveLength(2);
    expect(relative(sum(edges), 40 * Math.PI)).toBeLessThan(1e-12);
  });
});
