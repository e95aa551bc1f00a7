import { describe, expect, it } from "vitest";
import { endHeights } from "../../../src/core/unroll/endHeights";
import { expectAllClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob } from "../../support/pipeJob";

const opened = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "back" }, cuts: [openingCut({ shape: "round", diameter: 60 }, { height: 100 })] }));
const slit = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "back" }, cuts: [openingCut({ shape: "rectangle", width: 60, length: 600, turn: 0 }, { height: 100 })] }));

describe("endHeights", () => {
  it("leave an opening aside", () => {
    const span = opened.trimmed.spans.find(({ stretches }) => stretches.length === 2)!;
    const { bottom, top } = endHeights(opened.cutters, span, 2 * Math.PI)!;
    expectAllClose([bottom, top], [0, 250], 1e-12);
  });
  it("of an element with nothing kept are null", () => {
    const span = slit.trimmed.spans.find(({ stretches }) => stretches.length === 0)!;
    expect(endHeights(slit.cutters, span, span.from)).toBeNull();
  });
});
