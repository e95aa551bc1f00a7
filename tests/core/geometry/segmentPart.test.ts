import { describe, expect, it } from "vitest";
import { type Arc, type Cubic, segmentPoint } from "../../../src/core/geometry/segment";
import { segmentPart } from "../../../src/core/geometry/segmentPart";
import { expectClose } from "../../support/approximate";

const cubic: Cubic = { kind: "cubic", from: { x: 0, y: 0 }, c1: { x: 1, y: 4 }, c2: { x: 5, y: -2 }, to: { x: 6, y: 3 } };
const arc: Arc = { kind: "arc", from: { x: 5, y: 0 }, to: { x: -5, y: 0 }, centre: { x: 0, y: 0 }, anticlockwise: true };

describe("segmentPart", () => {
  it.each([["cubic", cubic], ["arc", arc]] as const)("segmentPart of a %s runs through the same points", (_, segment) => {
    const part = segmentPart(segment, 0.2, 0.7);
    for (const u of [0, 0.25, 0.5, 1]) {
      const [a, b] = [segmentPoint(part, u), segmentPoint(segment, 0.2 + 0.5 * u)];
      expectClose(Math.hypot(a.x - b.x, a.y - b.y), 0, 1e-12);
    }
  });
  it("segmentPart keeps whole ends to the last digit, and what else the segment carries", () => {
    const part = segmentPart({ ...cubic, owner: "top" }, 0, 0.5);
    expect(part.from).toBe(cubic.from);
    expect(part.owner).toBe("top");
  });
  it("segmentPart takes ends given to it", () => {
    const at = { x: 3, y: 1 };
    expect(segmentPart(cubic, 0, 0.5, cubic.from, at).to).toBe(at);
  });
});
