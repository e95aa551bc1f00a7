import { expect, it } from "vitest";
import { allowanceSum } from "../../../src/drawing/blank/allowanceSum";
import { ENGLISH_BLANK } from "../../../src/drawing/blank/blankWords";
import { METRIC } from "../../../src/drawing/figures";

const part = (factor: number, size: number, what: "width" | "wire" | "thickness" = "width") => ({ factor, size, what });

it("allowanceSum names an allowance and gives a width without parts once", () => {
  expect(allowanceSum({ place: "top", kind: "hem", width: 6, parts: [part(1, 6)] }, METRIC, ENGLISH_BLANK)).toBe("hem 6");
});

it("allowanceSum shows how a width comes about", () => {
  expect(allowanceSum({ place: "seam-end", kind: "grooved", width: 18, parts: [part(3, 6)] }, METRIC, ENGLISH_BLANK)).toBe("groove 3 × 6 = 18");
  expect(allowanceSum({ place: "top", kind: "wired", width: 8.8, parts: [part(2.5, 3.2, "wire"), part(1, 0.8, "thickness")] }, METRIC, ENGLISH_BLANK)).toBe("wired edge 2.5 × 3.2 + 0.8 = 8.8");
});
