import { describe, expect, it } from "vitest";
import { pipePoint } from "../../../src/core/form/pipe";
import { rolledPoint, roundPipe, type Vec3 } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";

const pipe = roundPipe({ diameter: 90, basis: "mean", thickness: 0, length: 220, attitude: "upright" });
const fractions = [0, 1e-300, 1e-12, 1e-6, 0.01, 0.25, 0.5, 0.75, 0.99, 1];
const faces = [1, -1] as const;

const between = (a: Vec3, b: Vec3) => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);

describe("rolledPoint", () => {
  it("preserves lengths of any straight line of the pattern at every fraction, to the chord's own shortfall", () => {
    const steps = 2000;
    const from = { x: 11, y: 20 }, to = { x: 260, y: 190 };
    const flat = Math.hypot(to.x - from.x, to.y - from.y);
    for (const towards of faces) {
      for (const fraction of fractions) {
        const place = (u: number) => rolledPoint(pipe, towards, { x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) }, fraction);
        let length = 0;
        for (let i = 0; i < steps; i++) length += between(place(i / steps), place((i + 1) / steps));
        // A chord of a circle falls short by step² / (24 r²) of itself.
        const shortfall = flat * ((to.x - from.x) / steps / pipe.radius) ** 2 / 24;
        expect(length).toBeLessThanOrEqual(flat + 1e-9);
        expectClose(length, flat, shortfall + 1e-9, `length at ${fraction}`);
      }
    }
  });

  it("bends evenly: any three neighbours lie on a circle of radius r / fraction", () => {
    for (const fraction of [0.01, 0.3, 0.7, 1]) {
      const centre = { x: 0, y: -pipe.radius / fraction };
      for (let x = 0; x <= pipe.girth; x += pipe.girth / 17) {
        const at = rolledPoint(pipe, -1, { x, y: 5 }, fraction);
        expectClose(Math.hypot(at.x - centre.x, at.y - centre.y), pipe.radius / fraction, 1e-9 / fraction, `radius at ${fraction}`);
      }
    }
  });

  it("lies flat at 0, read from the front, the middle of the girth at the origin", () => {
    for (const towards of faces) {
      for (const x of [0, 40, pipe.girth / 2, pipe.girth]) {
        const at = rolledPoint(pipe, towards, { x, y: 33 }, 0);
        expect([at.x, Math.abs(at.y), at.z]).toEqual([x - pipe.girth / 2, 0, 33]);
      }
    }
  });

  it("comes into the flat sheet smoothly: off the plane by no more than a²κ/2, whatever the fraction", () => {
    for (const towards of faces) {
      for (const fraction of [1e-300, 1e-200, 1e-100, 1e-20, 1e-9, 1e-6, 1e-3]) {
        const a = 100;
        const at = rolledPoint(pipe, towards, { x: pipe.girth / 2 + a, y: 0 }, fraction);
        const kappa = fraction / pipe.radius;
        expectClose(at.x, a, (a ** 3 * kappa ** 2) / 6 + 1e-12, `x at ${fraction}`);
        expectClose(at.y, (towards * a ** 2 * kappa) / 2, (a ** 4 * kappa ** 3) / 24 + 1e-15, `y at ${fraction}`);
      }
    }
  });

  it("lands on the pipe at 1: its points turned about the axis by minus the seam, half a turn more outside up, and moved by the radius", () => {
    for (const towards of faces) {
      for (const seam of [0, 1.1, Math.PI, 5]) {
        const turn = towards < 0 ? -seam : Math.PI - seam;
        for (let x = 0; x <= pipe.girth; x += pipe.girth / 23) {
          const onPipe = pipePoint(pipe, seam + (towards * x) / pipe.radius + turn, 71);
          const rolled = rolledPoint(pipe, towards, { x, y: 71 }, 1);
          expectClose(between(rolled, { ...onPipe, y: onPipe.y + towards * pipe.radius }), 0, 1e-12 * pipe.girth, `point at ${x}`);
        }
      }
    }
  });

  it("closes symmetrically: both seam edges stay at equal distances from the middle plane and meet at 1", () => {
    for (const fraction of fractions) {
      const left = rolledPoint(pipe, -1, { x: 0, y: 0 }, fraction), right = rolledPoint(pipe, -1, { x: pipe.girth, y: 0 }, fraction);
      expect(left.x + right.x).toBe(0);
      expect(left.y).toBe(right.y);
      if (fraction === 1) expectClose(right.x, 0, 1e-12 * pipe.girth, "gap");
    }
  });

  it("rolls inside up towards the reader and outside up away from them", () => {
    expect(rolledPoint(pipe, -1, { x: 0, y: 0 }, 0.5).y).toBeLessThan(0);
    expect(rolledPoint(pipe, 1, { x: 0, y: 0 }, 0.5).y).toBeGreaterThan(0);
  });

  it("refuses a fraction outside [0, 1]", () => {
    for (const fraction of [-0.01, 1.01, NaN]) expect(() => rolledPoint(pipe, 1, { x: 0, y: 0 }, fraction)).toThrow(RangeError);
  });
});
