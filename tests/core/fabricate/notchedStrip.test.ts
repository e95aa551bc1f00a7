import { describe, expect, it } from "vitest";
import { linesThrough } from "../../../src/core/geometry/chain";
import { pathArea } from "../../../src/core/geometry/path";
import { reverseSegment, type Segment } from "../../../src/core/geometry/segment";
import { notchedStrip } from "../../../src/core/fabricate/notchedStrip";
import { expectClose } from "../../support/approximate";

const straight = (length: number) => linesThrough([{ x: 0, y: 0 }, { x: length, y: 0 }]);

describe("notchedStrip", () => {
  it("notchedStrip along a straight edge has length × width less its two notches", () => {
    const edge = straight(100);
    const strip = notchedStrip(edge, 8, 0.01);
    if (!strip.ok) throw new Error(strip.code);
    const outline: Segment[] = [strip.notch, ...strip.outer, strip.lastNotch, ...edge.map(reverseSegment)];
    expectClose(Math.abs(pathArea(outline)), 100 * 8 - 8 * 8, 1e-6);
  });
  it("notchedStrip leaves the corners at 45°", () => {
    const strip = notchedStrip(straight(100), 8, 0.01);
    if (!strip.ok) throw new Error(strip.code);
    expectClose(strip.notch.to.x, 8, 1e-9);
    expectClose(strip.notch.to.y, -8, 1e-9);
    expectClose(strip.lastNotch.from.x, 92, 1e-9);
    expect(strip.lastNotch.to).toEqual({ x: 100, y: 0 });
  });
  it("notchedStrip is too wide where its notches meet", () => expect(notchedStrip(straight(15), 8, 0.01)).toMatchObject({ ok: false, code: "allowance-too-wide", at: { x: 15, y: 0 } }));
  it("notchedStrip crosses itself in a bend sharper than its width", () => {
    const bend: Segment = { kind: "arc", from: { x: 0, y: 0 }, to: { x: 6, y: 0 }, centre: { x: 3, y: 0 }, anticlockwise: false };
    expect(notchedStrip([bend], 4, 0.01)).toMatchObject({ ok: false, code: "allowance-crosses-itself" });
  });
});
