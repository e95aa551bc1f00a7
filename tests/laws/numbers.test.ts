import { describe, it } from "vitest";
import { develop } from "../../src/core/index";
import { onCase, onRandomPipes } from "../support/lawCase";
import { degeneratePipes } from "../support/degeneratePipes";
import { checkNumbers } from "./checkNumbers";

describe("the development", () => {
  it("of random cut pipes holds no NaN", () => onRandomPipes(({ development }) => checkNumbers(development)));
  it("of degenerate pipes holds no NaN", () => {
    for (const { name, job } of degeneratePipes()) onCase(name, job, ({ development }) => checkNumbers(development));
  });
  it("does not change the job it is given", () => onRandomPipes(({ job }) => {
    const before = JSON.stringify(job);
    develop(job);
    if (JSON.stringify(job) !== before) throw new Error("the job was changed");
  }, 200));
  it("is the same when done twice", () => onRandomPipes(({ job, development }) => {
    const again = develop(job);
    if (!again.ok || JSON.stringify(again.development.pieces[0]!.pattern) !== JSON.stringify(development.pieces[0]!.pattern)) throw new Error("another pattern");
  }, 200));
});
