import { describe, expect, it } from "vitest";
import { type Development, develop, pathLength } from "../../../src/core/index";
import { sentencesOf } from "../../../src/app/describe/sentenceText";
import { boundsOf } from "../../../src/drawing/bounds";
import type { Box } from "../../../src/drawing/box";
import { clearSpace } from "../../../src/drawing/clearSpace";
import { METRIC } from "../../../src/drawing/figures";
import { lessonPages } from "../../../src/drawing/lesson/lessonPages";
import { DEFAULT_LESSON, type LessonSheets } from "../../../src/drawing/lesson/lessonSheets";
import { LESSON_KINDS, type LessonKind } from "../../../src/drawing/lesson/lessonKinds";
import { ENGLISH_LESSON } from "../../../src/drawing/lesson/lessonWords";
import type { Page } from "../../../src/drawing/sheets/page";
import type { PaperName } from "../../../src/drawing/sheets/papers";
import { DEFAULT_SETUP, type PageSetup } from "../../../src/drawing/sheets/setup";
import { unionOf } from "../../../src/drawing/view/contour";
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
      for (const paper of ["A4", "Letter"] as const) {
        for (const { items, width, height } of pages(development, "question", { setup: on(paper) })) {
          expect(collisions(items), `${name} on ${paper}`).toEqual([]);
          const { left, right, bottom, top } = boundsOf(items);
          expect(left >= 10 && bottom >= 10 && right <= width - 10 && top <= height - 10, `${name} on ${paper}`).toBe(true);
        }
      }
    }
  });
});

describe("lessonPages: the exercise", () => {
  it("is on every question whole, beside the drawing or on a page after it, on A4 and A3, with a code to be read by a camera", () => {
    const dark = Array.from({ length: 77 }, () => Array.from({ length: 77 }, () => true));
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      const text = [sentencesOf(development.job, ({ value }) => String(value)).join(" "), ...TEXT];
      for (const paper of ["A4", "A3"] as const) {
        for (const kind of ["question", "started", "key"] as const) {
          const words = pages(development, kind, { setup: on(paper), text, code: "5KQ2M-3F", qr: dark }).flatMap(({ items }) => textsOf(items)).map((one) => one.text).join(" ");
          for (const paragraph of text) expect(words, `${name} on ${paper}`).toContain(paragraph);
        }
      }
    }
  });
});

describe("lessonPages: the title block", () => {
  it("says which sheet it is, the whole title and name, on the narrowest paper, in letters of 3.5 mm at least", () => {
    const school = { ...DEFAULT_LESSON.school, title: "Vent through the lean-to roof over the boiler, left hand, Monday's group", name: "Maximiliane-Alexandra Winterbottom-Featherstonehaugh of Upper Slaughterford" };
    for (const kind of LESSON_KINDS) {
      const [{ items }] = pages(EXAMPLE_DEVELOPMENTS[0]!.development, kind, { setup: on("A4"), school }) as [Page];
      const said = textsOf(items).map(({ text }) => text).join(" ");
      for (const one of [school.title, school.name, `· ${ENGLISH_LESSON.lesson.kinds[kind]}`]) expect(said, kind).toContain(one);
      expect(collisions(items), kind).toEqual([]);
    }
  });
});

describe("lessonPages: the school's name", () => {
  it("of 80 letters is written whole on every paper", () => {
    const school = "Harbour Road School for Trades and Crafts, Northern District, dept. of drawing";
    for (const paper of ["A4", "A3"] as const) {
      const [page] = pages(EXAMPLE_DEVELOPMENTS[0]!.development, "question", { setup: on(paper), school: { ...DEFAULT_LESSON.school, school } });
      expect(textsOf(page!.items).map(({ text }) => text).join(" "), paper).toContain(school);
      expect(collisions(page!.items), paper).toEqual([]);
    }
  });
});

describe("lessonPages: started", () => {
  const [vent] = EXAMPLE_DEVELOPMENTS;
  const begun = (started: LessonSheets["started"]) => pages(vent!.development, "started", { started }).flatMap(({ items }) => items);
  const line = (started: LessonSheets["started"]) => begun(started).filter((item) => item.kind === "path" && item.pen === "stretch-out");

  it("draws the stretch-out line at its true length, divided and numbered as far as asked", () => {
    const { girth } = vent!.development.pieces[0]!.pattern;
    for (const started of ["line", "divided", "numbered"] as const) {
      const { left, right } = boundsOf(line(started));
      expect(right - left).toBeCloseTo(girth / 2, 9);
      const ticks = begun(started).filter((item) => item.kind === "path" && item.pen === "station" && item.ref === undefined);
      expect(ticks).toHaveLength(started === "line" ? 0 : 17);
      const numbers = textsOf(begun(started)).filter(({ ref }) => ref?.station !== undefined);
      expect(numbers.length).toBe(started === "numbered" ? 16 + 17 : 0);
    }
  });

  it("contains no ordinate and no figure of the stretch-out", () => {
    const said = textsOf(begun("numbered")).map(({ text }) => text).join(" ").split(/[^\d.]+/);
    for (const figure of answers(vent!.development)) expect(said).not.toContain(figure);
  });
});

describe("lessonPages: key", () => {
  it("stands exactly where its question stands", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      for (const paper of ["A4", "A3"] as const) {
        const [question, begun, key] = (["question", "started", "key"] as const).map((kind) => boundsOf(pages(development, kind, { setup: on(paper), school: { ...DEFAULT_LESSON.school, marksMax: 15 } })[0]!.items.filter((item) => "pen" in item && item.pen === "centre line" && item.ref?.clause === "part")));
        expect(begun, name).toEqual(question);
        for (const side of ["left", "right", "bottom", "top"] as const) expect(key![side], name).toBeCloseTo(question![side], 6);
      }
    }
  });

  it("figures ordinates as the core has them, each at its own element, and the stretch-out both ways", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      const [piece] = development.pieces;
      const { items } = pages(development, "key", { setup: on("A1") })[0]!;
      const written = textsOf(items).filter((text) => text.ref?.station !== undefined && (text.turn !== 0 || development.job.part.attitude === "lying") && text.text !== piece!.stations[text.ref.station]!.label);
      expect(written.length, name).toBeGreaterThan(0);
      for (const { text, ref } of written) {
        const { before, after } = piece!.stations[ref!.station!]!;
        expect([...before, ...after].flatMap(({ from, to }) => [METRIC.length(from), METRIC.length(to)]), `${name}: ${text}`).toContain(text);
      }
      const said = textsOf(items).map(({ text }) => text).join(" ");
      const { developed, girth } = piece!.form;
      const count = piece!.stations.filter(({ mark }) => mark === "even").length;
      const stepped = count * developed * Math.sin(Math.PI / count);
      for (const one of [`π × ${METRIC.length(developed)} = ${METRIC.length(girth)}`, `= ${METRIC.length(stepped)}, ${METRIC.length(girth - stepped)} short`]) expect(said, name).toContain(one);
    }
  });

  it("figures every ordinate at its element, or says on the drawing that it is in the station table, on any paper, whatever the stations", () => {
    const seen = new Set<string>();
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      for (const paper of ["A4", "A3", "A1"] as const) {
        for (const count of [12, 24, 36, 48]) {
          const { job } = development;
          const outcome = develop({ ...job, development: { ...job.development, stations: count } });
          if (!outcome.ok) throw new Error(name);
          const [piece] = outcome.development.pieces;
          const { attitude } = job.part;
          const all = pages(outcome.development, "key", { setup: on(paper) });
          const [drawing] = all.map(({ items }) => textsOf(items));
          const figured = (index: number) => drawing!.filter(({ ref, text, turn }) => ref?.station === index && (attitude === "lying" ? text !== piece!.stations[index]!.label : turn !== 0)).map(({ text }) => text);
          const said = drawing!.map(({ text }) => text).join(" ");
          const named = /of stations ([\w, ]+), are in the station table/.exec(said)?.[1]?.split(", ") ?? [];
          const whole = said.includes("The ordinates are in the station table.");
          seen.add(whole ? "table" : named.length > 0 ? "some" : "all");
          piece!.stations.forEach(({ before, after, label }, index) => {
            if (index === 0 || whole || named.includes(label)) return;
            // From the base line no height is written, but where the element is nothing else.
            const heights = unionOf([...before, ...after]).flatMap(({ from, to }) => [...(Math.abs(from) > 1e-6 ? [from] : []), to]).map((z) => METRIC.length(z));
            expect(figured(index).sort(), `${name} ${paper} ${count}: ${label}`).toEqual(heights.sort());
          });
          if (!whole && named.length === 0) continue;
          const tabled = all.flatMap(({ items }) => textsOf(items)).map(({ text }) => text);
          for (const { top } of piece!.stations) if (top !== null) expect(tabled, `${name} ${paper} ${count}`).toContain(METRIC.length(top));
        }
      }
    }
    expect([...seen].sort()).toEqual(["all", "some", "table"]);
  });

  it("figures every ordinate of sixteen stations on A4, but where an opening stands in their way, whatever a class's diameters", () => {
    const { job } = EXAMPLE_DEVELOPMENTS[0]!.development;
    for (const diameter of [80, 90, 100, 110]) {
      const outcome = develop({ ...job, part: { ...job.part, diameter } });
      if (!outcome.ok) throw new Error(String(diameter));
      const dark = Array.from({ length: 53 }, () => Array.from({ length: 53 }, () => true));
      const said = textsOf(pages(outcome.development, "key", { setup: on("A4"), qr: dark })[0]!.items).map(({ text }) => text);
      for (const { top, openings } of outcome.development.pieces[0]!.stations) if (openings.length === 0) expect(said, `${diameter}`).toContain(METRIC.length(top!));
    }
  });

  it("draws no two lines of its construction nearer than 0.7 mm beside one another", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      const { job } = development;
      const outcome = develop({ ...job, development: { ...job.development, stations: 36 } });
      if (!outcome.ok) throw new Error(name);
      const lines = pages(outcome.development, "key", { setup: on("A4") })[0]!.items.flatMap((item) => (item.kind === "path" && item.pen === "faint" && item.ref === undefined && !item.closed ? [boundsOf([item])] : [])).filter((box) => Math.hypot(box.right - box.left, box.top - box.bottom) > 3);
      const near = lines.flatMap((a, i) => lines.slice(i + 1).filter((b) => {
        const beside = (a1: number, a2: number, b1: number, b2: number) => Math.min(a2, b2) - Math.max(a1, b1) > 0.01;
        const flat = a.top - a.bottom < 1e-3 && b.top - b.bottom < 1e-3 && beside(a.left, a.right, b.left, b.right) && Math.abs(a.top - b.top) < 0.699;
        const tall = a.right - a.left < 1e-3 && b.right - b.left < 1e-3 && beside(a.bottom, a.top, b.bottom, b.top) && Math.abs(a.left - b.left) < 0.699;
        return flat || tall;
      }));
      expect(near, name).toEqual([]);
    }
  });

  it("tables every station as the core has it", () => {
    for (const kind of ["key", "stationTable"] as const) {
      for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
        const all = pages(development, kind);
        const said = textsOf(all.flatMap(({ items }) => items)).map(({ text }) => text);
        for (const { girth, top, length } of development.pieces[0]!.stations) for (const value of [girth, top, length]) if (value !== null) expect(said, `${name} ${kind}`).toContain(METRIC.length(value));
      }
    }
  });

  it("prints the marking scheme with expected values, its sum and the tolerance", () => {
    const marking = [{ text: "Views", marks: 3 }, { text: "Stretch-out", marks: 2.5, expected: "282.74" }, { text: "Hidden edge missing", marks: -2 }];
    const said = textsOf(pages(EXAMPLE_DEVELOPMENTS[0]!.development, "key", { marking, tolerance: { length: 1, angle: 0.5 } }).flatMap(({ items }) => items)).map(({ text }) => text);
    for (const one of ["Views", "282.74", "−2 each", "5.5", "Right within ±1 mm on the paper and ±0.5°."]) expect(said).toContain(one);
  });

  it("lets no figure touch another, and clears the paper where a line runs through one", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) for (const { items } of pages(development, "key")) expect(collisions(items), name).toEqual([]);
  });
});

describe("lessonPages: card", () => {
  it("is the pattern at the scale it states, with a disc for each flat end", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      const outcome = lessonPages({ ...DEFAULT_LESSON, development, kind: "card", setup: on("A3") });
      if (!outcome.ok) throw new Error(name);
      const [page] = outcome.pages;
      const holes = page!.items.flatMap((item) => (item.kind === "path" && item.pen === "opening" ? [pathLength(item.segments)] : [])).reduce((sum, one) => sum + one, 0);
      const loops = development.pieces[0]!.pattern.loops.filter(({ kind }) => kind === "opening").reduce((sum, { segments }) => sum + pathLength(segments), 0);
      expect(holes, name).toBeCloseTo(loops * outcome.scale!, 6);
      expect(textsOf(page!.items).map(({ text }) => text)).toContain(`Card model, 1:${1 / outcome.scale!} of the piece.`);
    }
    const outlines = pages(EXAMPLE_DEVELOPMENTS[0]!.development, "card")[0]!.items.filter((item) => item.kind === "path" && item.pen === "outline");
    expect(outlines).toHaveLength(3);
  });
});

describe("lessonPages: steps", () => {
  const [vent, , , lamp] = EXAMPLE_DEVELOPMENTS;
  const headings = (all: readonly Page[]) => all.map(({ items }) => textsOf(items).flatMap(({ text }) => (/^\d+\. /.test(text) ? [text] : [])));

  it("shows every step once, in order, so many to a page", () => {
    for (const [count, a] of [[2, vent], [4, lamp]] as const) {
      const found = headings(pages(a!.development, "steps", { stepsPerPage: count }));
      expect(found.slice(0, -2).every((one) => one.length === count)).toBe(true);
      expect(found.flat().map((text) => Number(text.split(".")[0]))).toEqual(found.flat().map((_, i) => i + 1));
      expect(found.at(-1)).toEqual([expect.stringContaining("Dimension and")]);
    }
  });

  it("has at least four to a page on A4, in either angle, upright and lying, with figures in nothing's way", () => {
    for (const { name, development } of EXAMPLE_DEVELOPMENTS) {
      for (const projection of ["first", "third"] as const) {
        const all = pages(development, "steps", { setup: on("A4"), projection });
        expect(headings(all)[0]!.length, name).toBe(4);
        for (const { items, width, height } of all) {
          const { left, right, bottom, top } = boundsOf(items);
          expect(left >= 10 && bottom >= 10 && right <= width - 10 && top <= height - 10, name).toBe(true);
        }
      }
    }
  });

  it("draws fewer to a page where figures would smother so many", () => {
    for (const one of headings(pages(vent!.development, "steps", { stepsPerPage: 6, setup: on("A4") }))) expect(one.length).toBeLessThanOrEqual(4);
  });
});

describe("lessonPages: lettering", () => {
  it("is nowhere lower than 3.5 mm but on the rulers", () => {
    const marking = [{ text: "Views", marks: 3, expected: "complete" }];
    for (const kind of LESSON_KINDS) {
      for (const { items } of pages(EXAMPLE_DEVELOPMENTS[0]!.development, kind, { marking, tolerance: { length: 1, angle: 1 }, school: { ...DEFAULT_LESSON.school, school: "Harbour Road School", marksMax: 3 } })) {
        expect(textsOf(items).filter(({ height, text }) => height < 3.5 && !/^(\d+|mm|in)$/.test(text)).map(({ text }) => text), kind).toEqual([]);
      }
    }
  });
});

describe("lessonPages: code", () => {
  const dark = Array.from({ length: 21 }, (_, row) => Array.from({ length: 21 }, (_, column) => (row + column) % 2 === 0));
  const area = ({ left, right, bottom, top }: Box) => (right - left) * (top - bottom);

  it("prints code and picture, clear of everything, at the same place on question and key", () => {
    const places = (["question", "key"] as const).map((kind) => {
      const [{ items }] = pages(EXAMPLE_DEVELOPMENTS[0]!.development, kind, { code: "5KQ2M-3F", qr: dark }) as [Page];
      expect(textsOf(items).map(({ text }) => text)).toContain("5KQ2M-3F");
      const box = boundsOf(items.filter((item) => item.kind === "surface"));
      expect(area(box)).toBeGreaterThan(20 * 20);
      const space = clearSpace(1);
      space.take(items.filter((item) => item.kind !== "surface"));
      expect(space.isFree(box)).toBe(true);
      return box;
    });
    expect(places[1]).toEqual(places[0]);
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
