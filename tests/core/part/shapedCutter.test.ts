import { describe, expect, it } from "vitest";
import { roundPipe } from "../../../src/core/form/pipe";
import { shapedCutter } from "../../../src/core/part/shapedCutter";
import { removedStretches } from "../../../src/core/cut/removedStretches";
import { expectClose } from "../../support/approximate";
import { shapedCut, type Profile, type ShapedCut } from "../../support/pipeJob";

const pipe = roundPipe({ diameter: 100, basis: "mean", thickness: 0, length: 250, attitude: "upright" });
const made = (cut: ShapedCut) => shapedCutter(cut, pipe, "part.cuts.0", { kind: "cut", index: 0, id: "shaped" });

function removed(profile: Profile, theta: number, end: "top" | "bottom" = "top"): { from: number; to: number }[] {
  const cutter = made(shapedCut(profile, { end }));
  if ("code" in cutter) throw new Error(cutter.code);
  return removedStretches(cutter, 0, theta).map(({ from, to }) => ({ from, to }));
}

describe("shapedCutter", () => {
  it("takes away from a hollow to beyond the top of the stock", () => {
    const [stretch] = removed({ shape: "hollow", radius: 60, centre: 0, height: 100 }, 0);
    expectClose(stretch!.from, 100, 1e-12);
    expect(stretch!.to).toBeGreaterThan(250);
  });
  it("on the bottom end takes away from below the stock to the profile", () => {
    const [stretch] = removed({ shape: "hollow", radius: 60, centre: 0, height: 100 }, 0, "bottom");
    expect(stretch!.from).toBeLessThan(0);
    expectClose(stretch!.to, 100, 1e-12);
  });
  it("goes straight up beside a narrow hollow", () => expect(removed({ shape: "hollow", radius: 20, centre: 0, height: 100 }, 1)).toEqual([]));
  it("goes level beside a narrow nose", () => expectClose(removed({ shape: "nose", radius: 20, centre: 0, height: 100 }, 1)[0]!.from, 80, 1e-12));
  it("covers the contour element of a profile that ends there", () => {
    expect(removed({ shape: "ogee", low: 100, high: 150, rising: "right", radius: null }, Math.PI / 2)).toHaveLength(1);
  });
  it("refuses a profile that crosses itself and names both places", () => {
    const loop: Profile = { shape: "free", start: { x: -60, z: 100 }, legs: [{ to: { x: 20, z: 100 } }, { to: { x: 20, z: 120 } }, { to: { x: 0, z: 80 } }, { to: { x: 60, z: 80 } }] };
    expect(made(shapedCut(loop))).toMatchObject({ code: "profile-crosses-itself", field: "part.cuts.0.profile", detail: { first: 1, second: 3 } });
  });
});
