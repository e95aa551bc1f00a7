import { describe, expect, it } from "vitest";
import type { SweepCutter } from "../../../src/core/cut/cutter";
import { removedStretches } from "../../../src/core/cut/removedStretches";
import { segmentPoint } from "../../../src/core/geometry/segment";
import type { Vec2 } from "../../../src/core/geometry/vector";
import { expectClose } from "../../support/approximate";
import { isInside } from "../../support/loopSampling";
import { randomSource } from "../../support/randomSource";
import { RADIUS, plane, round, star, sweep } from "./cutters";

const removes = (cutter: SweepCutter, theta: number, z: number): boolean => removedStretches(cutter, 0, theta).some(({ from, to }) => z > from && z < to);

describe("removedStretches", () => {
  it("of a plane that takes the top are from it upwards without end", () => {
    const [stretch] = removedStretches(plane(100, 0.5), 3, 0);
    expect(stretch).toEqual({ from: 125, to: Infinity, fromFace: { cutter: 3, face: 0 }, toFace: null });
  });
  it("of a plane that takes the bottom are up to it", () => {
    const [stretch] = removedStretches({ ...plane(100), removes: "below" }, 3, 0);
    expect(stretch).toEqual({ from: -Infinity, to: 100, fromFace: null, toFace: { cutter: 3, face: 0 } });
  });
  it("of a round opening on its own element are its diameter", () => {
    const [stretch] = removedStretches(round(30, 100), 0, 0);
    expectClose(stretch!.from, 70, 1e-12);
    expectClose(stretch!.to, 130, 1e-12);
  });
  it("of an opening through both walls are the same on the far wall", () => {
    expect(removedStretches(round(30, 100), 0, Math.PI)).toHaveLength(1);
  });
  it("of an opening through the near wall leave the far wall whole", () => {
    expect(removedStretches(round(30, 100, 0, 0, [0, Infinity]), 0, Math.PI)).toEqual([]);
  });
  it("beside an opening are none", () => expect(removedStretches(round(30, 100), 0, 0.7)).toEqual([]));
  it("hold just the points inside the outline, on 300 random outlines with 20 points each", () => {
    const source = randomSource(63);
    for (let n = 0; n < 300; n++) {
      const outline = star(source, 0, 0);
      const direction = source.between(0, 7);
      const run: Vec2[] = outline.flatMap((segment) => Array.from({ length: 60 }, (_, i) => segmentPoint(segment, i / 60)));
      for (let k = 0; k < 20; k++) {
        const [psi, z] = [source.between(-1.2, 1.2), source.between(-45, 45)];
        const place = { x: RADIUS * Math.sin(psi), y: z };
        // Too near the edge for chords to tell.
        if (run.some(({ x, y }) => Math.hypot(x - place.x, y - place.y) < 0.6)) continue;
        expect(removes(sweep(outline, direction), direction + psi, z), `outline ${n}`).toBe(isInside([run], place));
      }
    }
  });
  it("come in order and apart from each other", () => {
    const source = randomSource(64);
    for (let n = 0; n < 300; n++) {
      const ends = removedStretches(sweep(star(source, 0, 0)), 0, source.between(-1.5, 1.5)).flatMap(({ from, to }) => [from, to]);
      expect(ends).toEqual([...ends].sort((a, b) => a - b));
    }
  });
});
