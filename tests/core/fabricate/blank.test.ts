import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";
import { shopPiece } from "./pieces";

const girth = 100 * Math.PI;

describe("blankOf", () => {
  it("blankOf a plain pipe is its rectangle of 2 mm steel", () => {
    const { blank } = shopPiece();
    expect(blank).toMatchObject({ material: "steel", density: 7850, thickness: 2 });
    expectClose(blank.sheetArea, girth * 200, 1e-6);
    expectClose(blank.mass, girth * 200 * 2 * 7850e-9, 1e-9);
    expectClose(blank.cutLength, 2 * (girth + 200), 1e-9);
  });
  it("blankOf a pierced pipe weighs less by the hole and is cut longer", () => {
    const { blank } = shopPiece({}, [openingCut({ shape: "round", diameter: 20 }, { height: 100, direction: 180 })]);
    expect(blank.mass).toBeLessThan(blank.sheetMass);
    expect(blank.sheetArea - blank.netArea).toBeGreaterThan(Math.PI * 100);
    expect(blank.cutLength).toBeGreaterThan(2 * (girth + 200) + 20 * Math.PI);
  });
  it("blankOf sheet of a density of its own uses that", () => expectClose(shopPiece({ density: 1000 }).blank.mass, girth * 200 * 2e-6, 1e-12));
  it("blankOf a template has no mass", () => expect(shopPiece({ purpose: "wrap" }).blank.mass).toBe(0));
});
