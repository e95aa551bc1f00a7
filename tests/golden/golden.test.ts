import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CASES } from "./cases";
import { firstDifference, kept } from "./normalised";

const FOLDER = new URL("drawings/", import.meta.url);

/** Greatest difference in mm: two roundings to two places. */
const TOLERANCE = 0.011;

const isWriting = process.env["FLATWRIGHT_GOLDEN"] === "write" && !process.env["CI"];
const fileOf = (name: string) => `${name.replace(/[^a-z0-9]+/gi, "-").toLowerCase()}.svg`;

describe("golden drawings", () => {
  for (const { name, draw } of CASES) {
    it(`${name}: is drawn as it is kept`, () => {
      const drawn = kept(draw());
      const file = new URL(fileOf(name), FOLDER);
      if (isWriting) {
        mkdirSync(FOLDER, { recursive: true });
        writeFileSync(file, drawn);
      }
      if (!existsSync(file)) throw new Error(`no golden drawing ${fileOf(name)}: npm run golden writes it`);
      expect(firstDifference(drawn, readFileSync(file, "utf8"), TOLERANCE)).toBeNull();
    });
  }

  it("are kept for the cases alone", () => {
    expect(readdirSync(FOLDER).sort()).toEqual(CASES.map(({ name }) => fileOf(name)).sort());
  });

  it("hold no number that is not one", () => {
    for (const file of readdirSync(FOLDER)) expect(readFileSync(new URL(file, FOLDER), "utf8")).not.toMatch(/NaN|Infinity|undefined/);
  });
});
