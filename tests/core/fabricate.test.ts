import { describe, expect, it } from "vitest";
import { fabricate } from "../../src/core/index";
import { developed } from "../support/developed";
import { pipeJob } from "../support/pipeJob";

const development = developed(pipeJob({ diameter: 100, length: 200 }));

describe("fabricate", () => {
  it("fabricate makes every piece of a development", () => {
    const { pieces, plates, parts, problems } = fabricate(development);
    expect([pieces.length, plates.length, parts.length, problems.length]).toEqual([1, 0, 1, 0]);
  });
  it.each([[0], [NaN], [11]])("fabricate refuses a tolerance of %d", (chordTolerance) => expect(() => fabricate(development, { chordTolerance })).toThrow(RangeError));
});
