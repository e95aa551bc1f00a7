import { expect, test } from "vitest";
import { describe } from "../../../src/app/describe/describe";
import { clauseMemory } from "../../../src/app/describe/reusedClauses";
import { pipeJob, planeCut } from "../../support/pipeJob";

test("clauses that say what they said are the same objects, and their numbers are put into the job of now", () => {
  const reused = clauseMemory();
  const job = (diameter: number, angle: number) => pipeJob({ diameter, length: 200, cuts: [planeCut({ height: 100, angle })] });
  const [body, cut] = reused(describe(job(50, 30)));
  const [thicker, same] = reused(describe(job(60, 30)));
  expect(thicker).not.toBe(body);
  expect(same).toBe(cut);
  const angle = same?.tokens.find((token) => token.kind === "number" && token.label === "Angle from square");
  if (angle?.kind !== "number") throw new Error("no angle");
  expect(angle.put(job(60, 30), 45)).toEqual(job(60, 45));
});
