import { describe, expect, it } from "vitest";
import { cutterAt, heightOn } from "../../../src/core/cut/heightOn";
import { spanAt, stretchesAround, stretchesOn } from "../../../src/core/trim/stretches";
import { TURN } from "../../../src/core/numeric/angle";
import { expectAllClose, expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { keptElements } from "../../support/keptElements";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";
import { randomSource } from "../../support/randomSource";

const job = pipeJob({
  diameter: 100, length: 250, seam: { at: "left" },
  cuts: [planeCut({ angle: 30, height: 180, direction: 40 }), openingCut({ shape: "round", diameter: 60 }, { height: 90, through: "both" }), openingCut({ shape: "rectangle", width: 30, length: 40, turn: 20 }, { height: 60, direction: 90, id: "window" })],
});
const piece = developedPipe(job);
const { form, cutters, trimmed: { spans } } = piece;
const step = developedPipe(pipeJob({ diameter: 100, length: 250, cuts: [shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 25 })] }));

describe("stretchesAround", () => {
  it("has the heights of the slow reading of the job, on 500 elements", () => {
    const source = randomSource(70);
    const slow = keptElements(job);
    for (let n = 0; n < 500; n++) {
      const theta = source.between(-10, 10);
      const expected = slow.at(theta).flatMap(({ from, to }) => [from, to]);
      expectAllClose(stretchesAround(form, cutters, spans, theta).after.flatMap(({ from, to }) => [from, to]), expected, 1e-9, `element at ${theta}`);
    }
  });
  it("is the same whole turns away", () => {
    for (const theta of [0.1, 2, 5]) {
      const [one, other] = [theta, theta - 3 * TURN].map((at) => stretchesAround(form, cutters, spans, at).before.map(({ to }) => to));
      expectAllClose(one!, other!, 1e-9);
    }
  });
  it("differs before and after only where an edge runs along the element", () => {
    const around = stretchesAround(step.form, step.cutters, step.trimmed.spans, Math.PI / 6);
    expectAllClose([around.before[0]!.to, around.after[0]!.to], [100, 150], 1e-12);
  });
  it("leaves out the opening where it closes to a point", () => {
    expect(stretchesAround(form, cutters, spans, Math.asin(0.6)).before).toHaveLength(1);
  });
});

describe("stretchesOn", () => {
  it("are as many as the span has, from low to high", () => {
    for (const span of spans) {
      const ends = stretchesOn(cutters, span, (span.from + span.to) / 2).flatMap(({ from, to }) => [from, to]);
      expect(ends).toEqual([...ends].sort((a, b) => a - b));
    }
  });
});

describe("heightOn", () => {
  it("of the top end is the length of the pipe", () => expectClose(heightOn(cutters, { cutter: 1, face: 0 }, 1), 250, 0));
  it("of a cutter that is not there throws", () => expect(() => heightOn(cutters, { cutter: 99, face: 0 }, 1)).toThrow(RangeError));
});

describe("cutterAt and spanAt", () => {
  it("cutterAt gives the cutter of a face", () => expect(cutterAt(cutters, { cutter: 2, face: 0 })).toBe(cutters[2]));
  it("spanAt counts on round the girth both ways", () => {
    expect([spanAt(spans, -1), spanAt(spans, spans.length)]).toEqual([spans.at(-1), spans[0]]);
  });
  it("spanAt of no spans throws", () => expect(() => spanAt([], 0)).toThrow(RangeError));
});
