import { describe, expect, it } from "vitest";
import { sameOwner } from "../../../src/core/cut/owner";

describe("sameOwner", () => {
  it("holds for one end", () => expect(sameOwner({ kind: "top" }, { kind: "top" })).toBe(true));
  it("does not hold for the two ends", () => expect(sameOwner({ kind: "top" }, { kind: "bottom" })).toBe(false));
  it("holds for one cut", () => expect(sameOwner({ kind: "cut", index: 1, id: "a" }, { kind: "cut", index: 1, id: "a" })).toBe(true));
  it("does not hold for two cuts", () => expect(sameOwner({ kind: "cut", index: 1, id: "a" }, { kind: "cut", index: 2, id: "b" })).toBe(false));
  it("does not hold for a cut and the seam", () => expect(sameOwner({ kind: "cut", index: 1, id: "a" }, { kind: "seam" })).toBe(false));
});
