import { describe, expect, it } from "vitest";
import { develop, type Marking } from "../../../src/core/index";
import { METRIC } from "../../../src/drawing/figures";
import { markItems } from "../../../src/drawing/lesson/markItems";
import { ENGLISH_LESSON } from "../../../src/drawing/lesson/lessonWords";
import { pipeJob } from "../../support/pipeJob";

const expectedGirth = (girth: Marking["girth"]) => {
  const job = pipeJob({ diameter: 50, length: 80 });
  const outcome = develop({ ...job, marking: { ...job.marking, girth, items: [{ id: "girth", text: "Stretch-out", marks: 3, by: "girth" }] } });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const [piece] = outcome.development.pieces;
  return markItems(outcome.development, piece!, METRIC, ENGLISH_LESSON)[0]?.expected;
};

// Elementary: the girth of a circle of 50 is 50 π = 157.08; twelve chords of it are 12 · 50 · sin 15° = 155.29.
describe("markItems", () => {
  it("expects the girth by the teacher's rule", () => {
    expect(expectedGirth("exact")).toBe("157.08");
    expect(expectedGirth("stepped")).toBe("155.29");
    expect(expectedGirth("either")).toBe("157.08 or 155.29");
  });
});
