import { describe, expect, it } from "vitest";
import { faceHeight } from "../../../src/core/cut/faceHeight";
import { planeCutter } from "../../../src/core/cut/planeCutter";
import { expectClose } from "../../support/approximate";

const owner = { kind: "top" } as const;
const heightAt = (at: "axis" | "low" | "high", theta: number): number =>
  faceHeight(planeCutter({ angle: Math.PI / 6, direction: 1, at, height: 120 }, 50, "above", owner), 0, theta);

describe("planeCutter", () => {
  it("placed on the axis has its height a quarter turn from its highest place", () => expectClose(heightAt("axis", 1 + Math.PI / 2), 120, 1e-12));
  it("placed by its low place is that low opposite its direction", () => expectClose(heightAt("low", 1 + Math.PI), 120, 1e-12));
  it("placed by its high place is that high at its direction", () => expectClose(heightAt("high", 1), 120, 1e-12));
  it("rises by the diameter times tan of its angle", () => expectClose(heightAt("axis", 1) - heightAt("axis", 1 + Math.PI), 100 * Math.tan(Math.PI / 6), 1e-12));
  it("refuses an angle outside [0, π/2)", () => {
    for (const angle of [-0.1, Math.PI / 2, NaN]) expect(() => planeCutter({ angle, direction: 0, at: "axis", height: 0 }, 50, "above", owner)).toThrow(RangeError);
  });
});
