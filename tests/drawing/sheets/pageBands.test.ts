import { describe, expect, it } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds";
import type { Item } from "../../../src/drawing/display";
import { type BandWords, LEAST_FIELD, mostOverFoot, pageBands } from "../../../src/drawing/sheets/pageBands";
import { ENGLISH_SHEET } from "../../../src/drawing/sheets/sheetWords";
import { collisions, textsOf } from "../../support/collisions";

const words: BandWords = {
  name: "A1", check: ENGLISH_SHEET.checkRuler, correction: ENGLISH_SHEET.corrected("Workshop", "A4", "+0.50", "−1.25"),
  heading: "Vent through the lean-to roof · pipe top plate, piece 2 of 2", longest: "Vent through the lean-to roof · pipe top plate, piece 2 of 2", sheet: "Sheet 12 of 64",
};
const longTitle = `${"The long title of a job ".repeat(5).trim()} · pipe, piece 1 of 2`;
const long: BandWords = {
  ...words, heading: longTitle, longest: longTitle, correction: ENGLISH_SHEET.corrected("The wide printer of the workshop, the one beside the window", "Tabloid", "+4.99", "−4.99"),
};
const on = (width: number, height: number, said = words) => pageBands({ left: 10, bottom: 10, right: 10 + width, top: 10 + height }, said);
const said = (items: readonly Item[]) => textsOf(items).filter(({ height }) => height === 3.5).map(({ text }) => text).join(" ");

/** Of A5, Letter, A4 with margins of 10 and 40, squares of 150, a wide roll cut short. */
const fields = [[128, 190], [196, 259], [190, 277], [130, 217], [130, 130], [LEAST_FIELD, LEAST_FIELD], [590, LEAST_FIELD], [LEAST_FIELD, 590], [277, 190], [800, 1100]] as const;

describe("pageBands", () => {
  for (const [width, height] of fields) {
    it(`names the ruler that stands on the page, and says everything whole: ${width} × ${height}`, () => {
      const { items } = on(width, height);
      const text = said(items);
      const [, length = ""] = /Check the (\d+) mm ruler/.exec(text) ?? [];
      const figures = textsOf(items).filter(({ height: size }) => size === 2.5);
      for (const turn of [0, Math.PI / 2]) expect(Math.max(...figures.filter((one) => one.turn === turn).map((one) => Number(one.text)).filter(Number.isFinite))).toBe(Number(length));
      for (const sentence of [words.check(Number(length)), words.correction, words.heading, words.sheet]) expect(text).toContain(sentence);
    });

    it(`lets nothing run into anything, nor over the edge: ${width} × ${height}`, () => {
      for (const one of [words, long]) {
        const { items, room } = on(width, height, one);
        expect(collisions(items)).toEqual([]);
        const { left, right, bottom, top } = boundsOf(items);
        expect(left).toBeGreaterThanOrEqual(10);
        expect(bottom).toBeGreaterThanOrEqual(10);
        expect(right).toBeLessThanOrEqual(10 + width + 1e-9);
        expect(top).toBeLessThanOrEqual(10 + height + 1e-9);
        for (const text of textsOf(items)) expect(boundsOf([text]).left < room.left || boundsOf([text]).top <= room.bottom, text.text).toBe(true);
      }
    });
  }

  it("keeps the ruler at 100 mm where the paper is at least that wide, and puts words over it", () => {
    expect(said(on(130, 217).items)).toContain("Check the 100 mm ruler");
  });

  it("leaves the same room on all pages of a document, and no less than is reckoned with", () => {
    for (const [width, height] of fields) {
      for (const one of [words, long]) {
        const { room } = on(width, height, { ...one, heading: "", sheet: "" });
        expect(on(width, height, { ...one, sheet: "Sheet 120 of 240" }).room).toEqual(room);
        expect(room.bottom - 25).toBeLessThanOrEqual(mostOverFoot(width) + 1e-9);
      }
    }
  });

  it("shortens a title and keeps what part of the job it is", () => {
    expect(said(on(130, 130, long).items)).toMatch(/The long title of.*… · pipe, piece 1 of 2/);
  });

  it("refuses a field without room", () => {
    expect(() => on(LEAST_FIELD - 1, 300)).toThrow(RangeError);
  });
});
