import { describe, expect, it } from "vitest";
import { linesThrough } from "../../../src/core/geometry/chain";
import { pathArea, pathLength } from "../../../src/core/geometry/path";
import { type Segment, reverseSegment } from "../../../src/core/geometry/segment";
import { expectClose } from "../../support/approximate";

const square = linesThrough([{ x: 1, y: 1 }, { x: 4, y: 1 }, { x: 4, y: 4 }, { x: 1, y: 4 }, { x: 1, y: 1 }]);
/** A square of side 2 with a half circle on its right side. */
const door: Segment[] = [
  { kind: "line", from: { x: 0, y: 0 }, to: { x: 2, y: 0 } },
  { kind: "arc", from: { x: 2, y: 0 }, to: { x: 2, y: 2 }, centre: { x: 2, y: 1 }, anticlockwise: true },
  { kind: "line", from: { x: 2, y: 2 }, to: { x: 0, y: 2 } },
  { kind: "line", from: { x: 0, y: 2 }, to: { x: 0, y: 0 } },
];

describe("pathLength", () => {
  it("of nothing is 0", () => expect(pathLength([])).toBe(0));
  it("of a square is four sides", () => expect(pathLength(square)).toBe(12));
  it("of a square with a half circle is three sides and half a girth", () => expectClose(pathLength(door), 6 + Math.PI, 1e-14));
});

describe("pathArea", () => {
  it("of a square away from the origin is its own", () => expect(pathArea(square)).toBe(9));
  it("of a square run clockwise is negative", () => expect(pathArea(square.map(reverseSegment).reverse())).toBe(-9));
  it("of a square with a half circle is the sum", () => expectClose(pathArea(door), 4 + Math.PI / 2, 1e-14));
});
