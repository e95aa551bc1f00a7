import { expect, it } from "vitest";
import { cutSheet } from "../../../src/drawing/blank/cutSheet";
import { shopPiece } from "../../core/fabricate/pieces";
import { openingCut } from "../../support/pipeJob";

const { contours } = shopPiece({}, [openingCut({ shape: "round", diameter: 40 }, { direction: 180, height: 80 })]);

it("cutSheet holds the places between the edges, not those in an opening or beside the sheet", () => {
  const sheet = cutSheet(contours);
  expect([{ x: 20, y: 20 }, { x: 50 * Math.PI, y: 80 }, { x: -1, y: 20 }, { x: 20, y: 201 }].map((place) => sheet.holds(place))).toEqual([true, false, false, false]);
});

it("cutSheet measures what is cut", () => {
  expect(cutSheet(contours).bounds.top).toBeCloseTo(200, 9);
});
