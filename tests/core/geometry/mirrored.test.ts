import { describe, expect, it } from "vitest";
import { linesThrough } from "../../../src/core/geometry/chain";
import { mirroredChain } from "../../../src/core/geometry/mirrored";
import { pathArea } from "../../../src/core/geometry/path";

const outline = linesThrough([{ x: 0, y: 0 }, { x: 3, y: 0 }, { x: 3, y: 1 }, { x: 0, y: 0 }]);

describe("mirroredChain", () => {
  it("mirroredChain keeps area and direction round", () => expect(pathArea(mirroredChain(outline, 10))).toBe(pathArea(outline)));
  it("mirroredChain twice is the chain", () => expect(mirroredChain(mirroredChain(outline, 10), 10)).toEqual(outline));
  it("mirroredChain changes left and right", () => expect(mirroredChain(outline, 10)[0]).toEqual({ kind: "line", from: { x: 10, y: 0 }, to: { x: 7, y: 1 } }));
});
