import { describe, expect, it } from "vitest";
import { pipePoint, pipeSize, roundPipe } from "../../../src/core/form/pipe";
import { expectClose } from "../../support/approximate";

const size = { diameter: 100, basis: "mean", thickness: 4, length: 250, attitude: "upright" } as const;

describe("roundPipe", () => {
  it("of an outside diameter D has the mean D - t", () => expect(roundPipe({ ...size, basis: "outside" }).mean).toBe(96));
  it("of an inside diameter d has the mean d + t", () => expect(roundPipe({ ...size, basis: "inside" }).mean).toBe(104));
  it("of a mean diameter has that mean", () => expect(roundPipe(size).mean).toBe(100));
  it("has an outside and an inside one thickness from the mean", () => {
    for (const basis of ["outside", "inside", "mean"] as const) {
      const { outside, inside, mean } = roundPipe({ ...size, basis });
      expect([outside - mean, mean - inside]).toEqual([4, 4]);
    }
  });
  it("without thickness has three equal diameters", () => {
    const { outside, inside, mean } = roundPipe({ ...size, thickness: 0, basis: "outside" });
    expect([outside, inside, mean]).toEqual([100, 100, 100]);
  });
  // THK-01: Cyclopedia of Drawing (1906), boiler-shell paragraph: the stretch-out is 3.1416 (d + t).
  it("has the girth π (d + t)", () => expectClose(roundPipe({ ...size, basis: "inside" }).girth, Math.PI * 104, 1e-12));
  it("has a girth of 2π times its radius", () => expectClose(roundPipe(size).girth, 2 * Math.PI * roundPipe(size).radius, 1e-12));
  it("refuses a wall that leaves no mean diameter", () => expect(() => roundPipe({ ...size, basis: "outside", thickness: 100 })).toThrow(RangeError));
  it("refuses a length that is not above zero", () => {
    for (const length of [0, -1, NaN]) expect(() => roundPipe({ ...size, length })).toThrow(RangeError);
  });
  it("refuses a diameter that is not above zero", () => {
    for (const diameter of [0, -1, NaN]) expect(() => roundPipe({ ...size, diameter, thickness: 0 })).toThrow(RangeError);
  });
  it("refuses a thickness below zero or that is not a number", () => {
    for (const thickness of [-1, NaN]) expect(() => roundPipe({ ...size, thickness })).toThrow(RangeError);
  });
});

describe("pipePoint", () => {
  const pipe = roundPipe(size);
  const places = [["front", 0, 0, -50], ["right", Math.PI / 2, 50, 0], ["back", Math.PI, 0, 50], ["left", 1.5 * Math.PI, -50, 0]] as const;
  for (const [name, theta, x, y] of places) {
    it(`of the ${name} element is (${x}, ${y})`, () => {
      const point = pipePoint(pipe, theta, 7);
      expectClose(point.x, x, 1e-12);
      expectClose(point.y, y, 1e-12);
      expect(point.z).toBe(7);
    });
  }
});

describe("pipeSize", () => {
  it("of a long pipe is its length", () => expect(pipeSize(roundPipe(size))).toBe(250));
  it("of a short pipe is its diameter", () => expect(pipeSize(roundPipe({ ...size, length: 20 }))).toBe(100));
});
