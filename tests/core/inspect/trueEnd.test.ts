import { describe, expect, it } from "vitest";
import { girthAt, trueEnd } from "../../../src/core/inspect/trueEnd";
import { expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const mitre = (face: "inside" | "outside") => developedPipe(pipeJob({ diameter: 100, length: 300, face, seam: { at: "right" }, cuts: [planeCut({ angle: 45, height: 150 })] }));

describe("trueEnd", () => {
  for (const face of ["inside", "outside"] as const) {
    it(`of a mitre, ${face} up, is the cosine`, () => {
      const { pattern: { seam, towards }, form } = mitre(face);
      for (const { x, y } of trueEnd(mitre(face), "top")) expectClose(y, 150 + 50 * Math.cos(seam + (towards * x) / form.radius), 1e-10);
    });
  }
  it("holds at least 360 points", () => expect(trueEnd(mitre("inside"), "top").length).toBeGreaterThan(360));
  it("of the square bottom is level", () => expect(new Set(trueEnd(mitre("inside"), "bottom").map(({ y }) => y))).toEqual(new Set([0])));
  it("leaves out where nothing is kept", () => {
    const slit = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "back" }, cuts: [openingCut({ shape: "rectangle", width: 50, length: 600, turn: 0 }, { height: 100 })] }));
    const middle = slit.pattern.girth / 2;
    expect(trueEnd(slit, "top").some(({ x }) => Math.abs(x - middle) < slit.pattern.girth / 12 - 1e-6)).toBe(false);
  });
});

describe("girthAt", () => {
  it("outside up grows with the direction", () => expectClose(girthAt({ seam: 1, towards: 1 }, 50, 1.5), 25, 1e-12));
  it("inside up grows against it", () => expectClose(girthAt({ seam: 1, towards: -1 }, 50, 0.5), 25, 1e-12));
  it("at the seam is 0", () => expect(girthAt({ seam: 1, towards: 1 }, 50, 1)).toBe(0));
});
