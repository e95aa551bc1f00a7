import { describe, expect, it } from "vitest";
import { pathArea } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { planeCut, shapedCut } from "../../support/pipeJob";
import { shopPiece, shopPipe, slope } from "./pieces";

const none = { kind: "none" } as const;

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
    expect(problems).toMatchObject([{ code: "allowance-crosses-itself", field: "fabrication.edges.top", detail: { place: "top" } }]);
    expectClose(Number(problems[0]!.detail!["height"]), 100, 25);
    expect(pieces[0]!.allowances).toEqual([]);
    expect(pieces[0]!.contours[0]!.segments.every(({ allowance }) => allowance === null)).toBe(true);
  });
  it("contoursOf two allowances that run into each other leave off both", () => {
    const slit = [planeCut({ id: "a", angle: 85, direction: 0, height: 60 })];
    const { problems } = shopPipe({ edges: { top: { kind: "flange", width: 70, slits: 0 }, bottom: none } }, slit);
    expect(problems.map(({ code }) => code)).toContain("allowance-crosses-itself");
  });
  it("contoursOf a lap wider than half the seam is long are refused as too wide", () => {
    const { problems } = shopPipe({ seam: { kind: "lap", width: 150, share: 1 } }, [slope]);
    expect(problems).toMatchObject([{ code: "allowance-too-wide", field: "fabrication.seam" }]);
  });
});
