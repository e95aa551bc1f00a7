import { describe, expect, it } from "vitest";
import { contoursOf } from "../../../src/core/fabricate/contour";
import { pathArea, type Allowance, type Loop } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { shapedCut } from "../../support/pipeJob";
import { shopPiece, shopPipe, slope } from "./pieces";

const none = { kind: "none" } as const;

/** A piece of 100 mm girth from one height to another, slanting a little so that nothing runs along anything else. */
function square(low: number, high: number): Loop {
  const corners = [{ x: 200, y: low }, { x: 300, y: low }, { x: 299, y: high }, { x: 201, y: high }];
  const owners = ["bottom", "seam", "top", "seam"] as const;
  return { kind: "outline", segments: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % 4]!, owner: { kind: owners[i]! } })) };
}

describe("contoursOf", () => {
  it("contoursOf a plain pipe with a lap and a hem add two strips, each less its notches", () => {
    const { contours, blank } = shopPiece({ seam: { kind: "lap", width: 10, share: 1 }, edges: { top: { kind: "hem", width: 5 }, bottom: none } });
    const girth = 100 * Math.PI;
    expectClose(pathArea(contours[0]!.segments), girth * 200 + (200 * 10 - 100) + (girth * 5 - 25), 1e-6);
    expectClose(blank.width, girth + 10, 1e-9);
    expectClose(blank.height, 205, 1e-9);
  });
  it("contoursOf tell what was added from the net edges", () => {
    const { contours } = shopPiece({ edges: { top: none, bottom: { kind: "flange", width: 8, slits: 0 } } });
    expect(contours[0]!.segments.map(({ allowance }) => allowance)).toEqual(["bottom", "bottom", "bottom", null, null, null]);
  });
  it("contoursOf an edge too hollow leave it as it is and name the place, along the girth and up", () => {
    const saddle = shapedCut({ shape: "hollow", radius: 50, centre: 0, height: 100 });
    const { problems, pieces } = shopPipe({ edges: { top: { kind: "hem", width: 60 }, bottom: none } }, [saddle]);
    expect(problems).toMatchObject([{ code: "allowance-crosses-itself", field: "fabrication.edges.top.width", detail: { place: "top" } }]);
    expectClose(Number(problems[0]!.detail!["height"]), 100, 25);
    expect(pieces[0]!.allowances).toEqual([]);
    expect(pieces[0]!.contours[0]!.segments.every(({ allowance }) => allowance === null)).toBe(true);
  });
  it("contoursOf an edge near another piece leave off what would run into it, once for each place", () => {
    const allowance: Allowance = { place: "top", kind: "flange", width: 20, parts: [] };
    const { contours, refusals } = contoursOf([square(0, 50), square(60, 110)], [allowance], 1000, [], 0.01);
    expect(refusals).toEqual([{ code: "allowance-meets-outline", place: "top", at: expect.anything() as unknown }]);
    expectClose(refusals[0]!.at.y, 60, 1e-9);
    expect(contours.flatMap(({ segments }) => segments).every((segment) => segment.allowance === null)).toBe(true);
  });
  it("contoursOf a lap wider than half the seam is long are refused as too wide", () => {
    const { problems } = shopPipe({ seam: { kind: "lap", width: 150, share: 1 } }, [slope]);
    expect(problems).toMatchObject([{ code: "allowance-too-wide", field: "fabrication.seam.width" }]);
  });
});
