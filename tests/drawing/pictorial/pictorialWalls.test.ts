import { describe, expect, it } from "vitest";
import { rolledPoint, roundPipe, type Vec3 } from "../../../src/core/index";
import { wallsOf } from "../../../src/drawing/pictorial/pictorialWalls";
import { expectClose } from "../../support/approximate";
import { randomSource } from "../../support/randomSource";

const pipe = roundPipe({ diameter: 80, basis: "mean", thickness: 0, length: 100, attitude: "upright" });

/** Positive where the outside is turned to the viewer: from the cross product of small steps along girth and height. */
function outsideFacing(towards: 1 | -1, viewer: Vec3, fraction: number, x: number): number {
  const a = rolledPoint(pipe, towards, { x: x - 1e-4, y: 0 }, fraction), b = rolledPoint(pipe, towards, { x: x + 1e-4, y: 0 }, fraction);
  // (b - a) × z points away from the reader of the flat sheet, to whom the up face is shown.
  const normal = { x: b.y - a.y, y: a.x - b.x };
  return (towards * (normal.x * viewer.x + normal.y * viewer.y)) / 2e-4;
}

describe("wallsOf", () => {
  const random = randomSource(7);
  const cases = Array.from({ length: 300 }, () => {
    const turn = random.between(0, 2 * Math.PI), tilt = random.between(-1.5, 1.5);
    return {
      towards: random.pick([1, -1] as const), fraction: random.chance(0.1) ? 1 : random.unit(),
      viewer: { x: Math.cos(tilt) * Math.sin(turn), y: -Math.cos(tilt) * Math.cos(turn), z: Math.sin(tilt) },
    };
  });

  it("shows at every place of the girth the side that is turned to the viewer", () => {
    for (const { towards, fraction, viewer } of cases) {
      const { walls } = wallsOf(pipe, towards, viewer, fraction);
      for (let x = 0.5; x < pipe.girth; x += 3.7) {
        const facing = outsideFacing(towards, viewer, fraction, x);
        if (Math.abs(facing) < 1e-3) continue;
        expect(walls.find(({ from, to }) => x >= from && x <= to)?.side).toBe(facing > 0 ? "outside" : "inside");
      }
    }
  });

  it("covers the girth once, inside walls before outside walls", () => {
    for (const { towards, fraction, viewer } of cases) {
      const { walls } = wallsOf(pipe, towards, viewer, fraction);
      expectClose(walls.reduce((sum, { from, to }) => sum + to - from, 0), pipe.girth, 1e-9, "girth");
      const sides = walls.map(({ side }) => side);
      expect(sides).toEqual([...sides].sort());
    }
  });

  it("puts contours where the wall is seen edge-on", () => {
    for (const { towards, fraction, viewer } of cases) {
      for (const x of wallsOf(pipe, towards, viewer, fraction).contours) expectClose(outsideFacing(towards, viewer, fraction, x), 0, 1e-6, "facing");
    }
  });

  it("shows one side of a flat sheet, and no contour", () => {
    expect(wallsOf(pipe, -1, { x: 0, y: -1, z: 0 }, 0)).toEqual({ walls: [{ side: "inside", from: 0, to: pipe.girth }], contours: [] });
    expect(wallsOf(pipe, 1, { x: 0, y: -1, z: 0 }, 0).walls).toEqual([{ side: "outside", from: 0, to: pipe.girth }]);
  });

  it("finds no contour when seen along the axis", () => {
    expect(wallsOf(pipe, -1, { x: 0, y: 0, z: 1 }, 1).contours).toEqual([]);
  });

  it("draws a contour that falls on the closed seam", () => {
    const { contours } = wallsOf(pipe, -1, { x: 1, y: 0, z: 0 }, 1);
    expect(contours.map((place) => Math.round((place / pipe.girth) * 1e6) / 1e6)).toEqual([0, 0.5, 1]);
  });
});
