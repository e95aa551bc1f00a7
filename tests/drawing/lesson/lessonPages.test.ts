import { describe, expect, it } from "vitest";
import type { Development } from "../../../src/core/index";
import { boundsOf } from "../../../src/drawing/bounds";
import { METRIC } from "../../../src/drawing/figures";
import { lessonPages } from "../../../src/drawing/lesson/lessonPages";
import { DEFAULT_LESSON, type LessonKind, type LessonSheets } from "../../../src/drawing/lesson/lessonSheets";
import type { PaperName } from "../../../src/drawing/sheets/papers";
import { DEFAULT_SETUP, type PageSetup } from "../../../src/drawing/sheets/setup";
import { collisions, textsOf } from "../../support/collisions";
import { EXAMPLE_DEVELOPMENTS } from "../../support/examples";

const on = (name: PaperName): PageSetup => ({ ...DEFAULT_SETUP, paper: { kind: "named", name } });
const TEXT = ["Develop the surface of the piece.", "Leave the construction standing, thin; line in the outline."];

function pages(development: Development, kind: LessonKind, more: Partial<LessonSheets> = {}) {
  const outcome = lessonPages({ ...DEFAULT_LESSON, development, kind, setup: on("A3"), text: TEXT, ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.pages;
}

/** What only the development tells: girth and spacing, ordinates of every station that are no figure of the job. */
function answers({ job, pieces }: Development): string[] {
  const given = new Set([...JSON.stringify(job).matchAll(/-?\d+(\.\d+)?/g)].map(([number]) => METRIC.length(Math.abs(Number(number)))));
  return pieces.flatMap(({ pattern: { girth }, stations }) => [girth, ...stations.slice(1, -1).map((one) => one.girth), ...stations.flatMap(({ bottom, top, length }) => [bottom ?? 0, top ?? 0, length])])
    .map((value) => METRIC.length(value)).filter((text) => !given.has(text) && text.includes("."));
}

describe("lessonPages: question", () => {
  it("contains no answer, on any example, with and without the views completed", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      const answer = answers(development);
      expect(answer.length, name).toBeGreaterThan(4);
      for (const found of [false, true]) {
        for (const { items } of pages(development, "question", { views: { other: true, found } })) {
          const said = textsOf(items).map(({ text }) => text).join(" ");
          for (const figure of answer) expect(said.split(/[^\d.]+/), `${name}: ${figure}`).not.toContain(figure);
          expect(items.filter((item) => "pen" in item && ["outline", "station", "extra station"].includes(item.pen)), name).toEqual([]);
        }
      }
    }
  });

  it("lets no figure touch another or any line, inside the margins", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      for (const paper of ["A4", "A3", "Letter"] as const) {
        for (const { items, width, height } of pages(development, "question", { setup: on(paper) })) {
          expect(collisions(items), `${name} on ${paper}`).toEqual([]);
          const { left, right, bottom, top } = boundsOf(items);
          expect(left >= 10 && bottom >= 10 && right <= width - 10 && top <= height - 10, `${name} on ${paper}`).toBe(true);
        }
      }
    }
  });
});

describe("lessonPages: bad input", () => {
  const [first] = EXAMPLE_DEVELOPMENTS;
  const codes = (more: Partial<LessonSheets>) => {
    const outcome = lessonPages({ ...DEFAULT_LESSON, development: first!.development, kind: "question", setup: on("A4"), ...more });
    return outcome.ok ? [] : outcome.problems.map(({ code, field }) => `${code} ${field}`);
  };

  it("refuses a scale that does not fit, paper without room and a piece that is not there", () => {
    expect(codes({ scale: 5 })).toEqual(["scale-too-large scale"]);
    expect(codes({ setup: { ...on("A4"), margin: NaN } })).toEqual(["not-a-number margin"]);
    expect(codes({ development: { ...first!.development, pieces: [] } })).toEqual(["nothing-to-print "]);
  });
});
