import { describe, expect, it } from "vitest";
import { TURN } from "../../../src/core/numeric/angle";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";
import { spansOf } from "../../../src/core/trim/spans";
import { expectAllClose, expectClose } from "../../support/approximate";

const bare = developedPipe(pipeJob({ diameter: 100, length: 250 }));
const mitre = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [planeCut({ angle: 45, height: 250 })] }));
const opened = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [openingCut({ shape: "round", diameter: 50 }, { height: 100 })] }));
const stepped = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 25 })] }));

describe("spansOf", () => {
  it("of an uncut pipe is one whole turn", () => {
    expect(spansOf(bare.form, bare.cutters, 1).map(({ from, to, stretches }) => [from, to, stretches.length])).toEqual([[1, 1 + TURN, 1]]);
  });
  it("begins at the place asked for and ends there a turn later", () => {
    const spans = spansOf(opened.form, opened.cutters, 4);
    expect([spans[0]!.from, spans.at(-1)!.to]).toEqual([4, 4 + TURN]);
  });
  it("brings its beginning into [0, 2π)", () => expectClose(spansOf(opened.form, opened.cutters, -1)[0]!.from, TURN - 1, 1e-15));
  it("leaves no gap and no overlap", () => {
    const spans = spansOf(opened.form, opened.cutters, 0.2);
    for (let k = 1; k < spans.length; k++) expect(spans[k]!.from).toBe(spans[k - 1]!.to);
  });
  it("breaks where two planes meet", () => {
    expectAllClose(spansOf(mitre.form, mitre.cutters, 0).map(({ from }) => from), [0, Math.PI / 2, 1.5 * Math.PI], 1e-12);
  });
  it("breaks at the upright tangents of an opening, 30° to both sides", () => {
    const two = spansOf(opened.form, opened.cutters, 1).filter(({ stretches }) => stretches.length === 2);
    expectAllClose(two.flatMap(({ from, to }) => [from, to]), [(11 * Math.PI) / 6, (13 * Math.PI) / 6], 1e-12);
  });
  it("breaks where a step stands upright", () => {
    const borders = spansOf(stepped.form, stepped.cutters, 0).map(({ from }) => from);
    for (const place of [Math.PI / 6, (5 * Math.PI) / 6]) expect(borders.some((border) => Math.abs(border - place) < 1e-12)).toBe(true);
  });
});
