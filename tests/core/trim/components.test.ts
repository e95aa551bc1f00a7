import { describe, expect, it } from "vitest";
import { develop } from "../../../src/core/index";
import { componentCount } from "../../../src/core/trim/components";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, type Cut } from "../../support/pipeJob";

const count = (cuts: readonly Cut[]): number => developedPipe(pipeJob({ diameter: 100, length: 250, cuts })).trimmed.components;
const slit = (direction: number): Cut => openingCut({ shape: "rectangle", width: 10, length: 600, turn: 0 }, { height: 100, direction, id: `slit-${direction}` });
const band = openingCut({ shape: "rectangle", width: 300, length: 20, turn: 0 }, { height: 100, through: "both", id: "band" });

describe("componentCount", () => {
  it("of an uncut pipe is 1", () => expect(count([])).toBe(1));
  it("of a pipe slit along its length is 1", () => expect(count([slit(30)])).toBe(1));
  it("of a pipe slit twice is 2", () => expect(count([slit(0), slit(180)])).toBe(2));
  it("of a pipe slit four times is 4", () => expect(count([slit(0), slit(90), slit(180), slit(270)])).toBe(4));
  it("of a pipe cut through by a band is 2", () => expect(count([band])).toBe(2));
  it("of a pipe cut through by a band and slit twice is 4", () => expect(count([band, slit(0), slit(180)])).toBe(4));
  it("of a pipe bored right through at its own diameter, whose halves touch in two points, is 2", () => {
    expect(count([openingCut({ shape: "round", diameter: 100 }, { height: 100, through: "both" })])).toBe(2);
  });
  it("of no spans is 0", () => {
    const { form, cutters } = developedPipe(pipeJob({ diameter: 100, length: 250 }));
    expect(componentCount(form, cutters, [])).toBe(0);
  });
  it("of a pipe with nothing left makes no piece", () => {
    const outcome = develop(pipeJob({ diameter: 100, length: 250, cuts: [openingCut({ shape: "rectangle", width: 300, length: 600, turn: 0 }, { height: 100, through: "both" })] }));
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(["nothing-left"]);
  });
});
