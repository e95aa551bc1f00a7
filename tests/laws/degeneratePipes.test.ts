import { describe, it } from "vitest";
import { degeneratePipes } from "../support/degeneratePipes";
import { checkRefusal, lawCase, onEach } from "../support/lawCase";
import { CLAIMS } from "./claims";

const pipes = degeneratePipes();
const cases = pipes.map(({ name, job }) => lawCase(name, job)).filter((one) => one !== null);

describe("a pipe whose edges touch, coincide or run along elements", () => {
  it("is made unless nothing is left of it", () => onEach(pipes, ({ job }) => checkRefusal(job)));

  it.each(CLAIMS)("%s", (_, check) => onEach(cases, check));
});
