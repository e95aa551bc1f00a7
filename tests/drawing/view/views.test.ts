import { describe, expect, it } from "vitest";
import { type Broadside, type EndOn, sheetAngle, sideways, viewsOf } from "../../../src/drawing/view/views";

const front = 0, right = Math.PI / 2, back = Math.PI, left = (3 * Math.PI) / 2;
const place = (view: Broadside | EndOn, theta: number) => {
  if (view.kind === "broadside") throw new Error("not seen end-on");
  const angle = sheetAngle(view, theta);
  return [Math.round(Math.cos(angle)) + 0, Math.round(Math.sin(angle)) + 0];
};
const across = (view: Broadside | EndOn, theta: number) => (view.kind === "broadside" ? Math.round(sideways(view, 1, theta)) : NaN);

describe("viewsOf", () => {
  it("shows the front of an upright pipe at the foot of the top view, its right side on the right", () => {
    const { top } = viewsOf("upright", "first");
    expect([front, right, back, left].map((theta) => place(top, theta))).toEqual([[0, -1], [1, 0], [0, 1], [-1, 0]]);
  });

  it("shows the front of an upright pipe on the right of the view from the left, on the left of the view from the right", () => {
    expect(across(viewsOf("upright", "first").side, front)).toBe(1);
    expect(across(viewsOf("upright", "third").side, front)).toBe(-1);
  });

  it("shows the left side of a lying pipe on top, its front at the viewer's right seen from the left", () => {
    const { side } = viewsOf("lying", "first");
    expect([place(side, left), place(side, front)]).toEqual([[0, 1], [1, 0]]);
  });

  it("shows the left side of a lying pipe on top, its front at the viewer's left seen from the right", () => {
    const { side } = viewsOf("lying", "third");
    expect(place(side, left).map(Math.abs)).toEqual([0, 1]);
    expect(place(side, front)[0]).toBe(-1);
    expect(place(side, left)[1]).toBe(1);
  });

  it("looks down on the left side of a lying pipe", () => {
    expect(viewsOf("lying", "first").top).toEqual({ kind: "broadside", facing: left });
  });
});
