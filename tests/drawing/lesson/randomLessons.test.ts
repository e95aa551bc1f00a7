import { describe, expect, it } from "vitest";
import { lessonPages } from "../../../src/drawing/lesson/lessonPages";
import { DEFAULT_LESSON } from "../../../src/drawing/lesson/lessonSheets";
import { LESSON_KINDS } from "../../../src/drawing/lesson/lessonKinds";
import { DEFAULT_SETUP } from "../../../src/drawing/sheets/setup";
import { collisions } from "../../support/collisions";
import { randomCases } from "../../support/lawCase";

const setup = { ...DEFAULT_SETUP, paper: { kind: "named", name: "A2" } } as const;

describe("lessonPages on random pipes", () => {
  for (const { name, development } of randomCases(10)) {
    it(`${name}: every kind of sheet comes out, without a number that is none and without figures in one another`, () => {
      for (const kind of LESSON_KINDS) {
        const outcome = lessonPages({ ...DEFAULT_LESSON, development, kind, setup, text: ["Develop the surface."], stepsPerPage: 2 });
        if (!outcome.ok) throw new Error(`${kind}: ${JSON.stringify(outcome.problems)}`);
        for (const { items } of outcome.pages) {
          // What is no number is written as null; so is the field of a figure that follows from several.
          const none = JSON.stringify(items).match(/"(x|y|radius|length|height|turn|direction)":null|NaN|Infinity/);
          expect(none && none[0], kind).toBeNull();
          if (kind === "question" || kind === "key" || kind === "card") expect(collisions(items), kind).toEqual([]);
        }
      }
    });
  }
});
