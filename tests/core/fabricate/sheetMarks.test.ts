import { describe, expect, it } from "vitest";
import type { Mark } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { shopPiece, slope } from "./pieces";

const of = <K extends Mark["kind"]>(marks: readonly Mark[], kind: K) => marks.filter((mark) => mark.kind === kind) as Extract<Mark, { kind: K }>[];

describe("arrowMarks", () => {
  it("arrowMarks point to the top on the longest element", () => {
    const [{ line }] = of(shopPiece({}, [slope]).marks, "top") as [Extract<Mark, { kind: "top" }>];
    expectClose(line.from.x, 50 * Math.PI, 1e-9);
    expect(line.to.y).toBeGreaterThan(line.from.y);
  });
  it("arrowMarks of a template have no rolling direction", () => {
    expect(of(shopPiece().marks, "rolling")).toHaveLength(1);
    expect(of(shopPiece({ purpose: "wrap" }).marks, "rolling")).toEqual([]);
  });
});

describe("seamMatchMarks", () => {
  it("seamMatchMarks stand at one height on both edges, not in the middle", () => {
    const [start, end] = of(shopPiece().marks, "match").filter(({ id }) => id === "seam");
    expectClose(start!.at.y, 200 / 3, 1e-9);
    expectClose(end!.at.y, 200 / 3, 1e-9);
    expectClose(end!.at.x - start!.at.x, 100 * Math.PI, 1e-9);
  });
});
