import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/index";
import { degeneratePipes } from "../support/degeneratePipes";
import { lawCase, onEach, refusalExpected } from "../support/lawCase";
import { CLAIMS } from "./claims";

const pipes = degeneratePipes();
const cases = pipes.map(({ name, job }) => lawCase(name, job)).filter((one) => one !== null);

describe("a pipe whose edges touch, coincide or run along elements", () => {
  it("is made unless nothing is left of it", () => onEach(pipes, ({ job }) => {
    const outcome = develop(job);
    expect(outcome.ok ? null : outcome.problems[0]!.code).toBe(refusalExpected(job));
  }));

  it.each(CLAIMS)("%s", (_, check) => onEach(cases, check));
});
