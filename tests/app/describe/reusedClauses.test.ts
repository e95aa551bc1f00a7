import { expect, test } from "vitest";
import { describe } from "../../../src/app/describe/describe";
import { shopClauses } from "../../../src/app/describe/shop/shopClauses";
import type { Token } from "../../../src/app/describe/token";
import { shopWords } from "../../../src/app/words/shop";
import { clauseMemory } from "../../../src/app/describe/reusedClauses";
import type { Job } from "../../../src/core/index";
import { pipeJob, planeCut } from "../../support/pipeJob";
import { pipeWith, slant } from "../pipe";

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

test("the tokens of a clause that has changed stay too, and put what belongs to the clause of now", () => {
  const reused = clauseMemory();
  const job = (width: number): Job => {
    const { fabrication, ...rest } = pipeWith([slant]);
    return { ...rest, fabrication: { ...fabrication, edges: { ...fabrication.edges, top: { kind: "flange", width, slits: 0 } } } };
  };
  const tokensOf = (width: number) => reused(shopClauses(job(width), new Set())).flatMap(({ tokens }) => tokens);
  const slitsOf = (tokens: readonly Token[]) => tokens.find((token) => token.kind === "choice" && token.label === shopWords.fields.slit);
  const before = tokensOf(10);
  const after = tokensOf(20);
  const slits = slitsOf(after);
  expect(slits).toBe(slitsOf(before));
  expect(after).not.toEqual(before);
  if (slits?.kind !== "choice") throw new Error("no slits");
  expect(slits.put(job(20), "yes").fabrication.edges.top).toEqual({ kind: "flange", width: 20, slits: 20 });
});
