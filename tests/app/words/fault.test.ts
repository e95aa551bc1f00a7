import { expect, test } from "vitest";
import { develop, parseJob } from "../../../src/core/index";
import { formatOf } from "../../../src/app/quantity/format";
import { faultSentence, quantityOf } from "../../../src/app/words/fault";
import { pipeWith, slant } from "../pipe";

const format = formatOf("mm", { places: 2, denominator: 0, comma: false });

test("faultSentence writes a bound in the unit of its own field", () => {
  const read = parseJob(pipeWith([{ ...slant, angle: 95 } as typeof slant]));
  const problem = read.ok ? undefined : read.problems[0];
  expect(problem && faultSentence({ kind: "problem", problem }, format)).toBe("At most 89.9°.");
});

test("faultSentence says when nothing would be left", () => {
  const outcome = develop(pipeWith([{ ...slant, height: -500 } as typeof slant]));
  const problem = outcome.ok ? undefined : outcome.problems[0];
  expect(problem && faultSentence({ kind: "problem", problem }, format)).toBe("Nothing would be left of the pipe.");
});

test.each([
  ["part.cuts.0.angle", "angle"],
  ["development.extra.2", "angle"],
  ["development.stations", "count"],
  ["part.cuts.0.outline.turn", "angle"],
  ["part.diameter", "length"],
] as const)("quantityOf %s is %s", (field, quantity) => {
  expect(quantityOf(field)).toBe(quantity);
});
