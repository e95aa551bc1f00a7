import { describe, expect, it } from "vitest";
import type { Development } from "../../../src/core/index";
import { boundsOf } from "../../../src/drawing/bounds";
import { board as drawnBoard } from "../../../src/drawing/board/board";
import { boxesOverlap } from "../../../src/drawing/box";
import { clearSpace } from "../../../src/drawing/clearSpace";
import type { Item, TextItem } from "../../../src/drawing/display";
import { moveItem } from "../../../src/drawing/moveItem";
import { type DocumentKind, documentPages } from "../../../src/drawing/sheets/documentPages";
import type { Page } from "../../../src/drawing/sheets/page";
import { type PaperName, paperNamed } from "../../../src/drawing/sheets/papers";
import type { Section } from "../../../src/drawing/sheets/section";
import { ENGLISH_SHEET } from "../../../src/drawing/sheets/sheetWords";
import { DEFAULT_SETUP, type PageSetup } from "../../../src/drawing/sheets/setup";
import { collisions, textsOf } from "../../support/collisions";
import { developed } from "../../support/developed";
import { type Job, openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const small = developed(pipeJob({ diameter: 40, length: 80, stations: 8 }));
const large = developed(pipeJob({ diameter: 300, length: 700, cuts: [openingCut({ shape: "round", diameter: 60 }, { height: 300 })] }));
const shopJob: Job = {
  ...pipeJob({
    diameter: 100, length: 150, thickness: 1.6, basis: "outside", cuts: [planeCut({ angle: 30, height: 110 })],
    fabrication: { quantity: 3, gauge: null, seam: { kind: "lap", width: 12, share: 1 }, edges: { top: { kind: "none" }, bottom: { kind: "hem", width: 6 } }, plates: { top: { fit: "inside", gap: 1 }, bottom: null } },
  }), title: "Vent",
};
const shop = developed(shopJob);

/** A top of six planes, each closed by a plate of its own. */
const manyParts = developed(pipeJob({
  diameter: 100, length: 200, thickness: 1, cuts: [0, 60, 120, 180, 240, 300].map((direction) => planeCut({ id: `roof-${direction}`, angle: 30, direction, at: "axis", height: 150 })),
  fabrication: { quantity: 12, plates: { top: { fit: "inside", gap: 0 }, bottom: { fit: "inside", gap: 0 } } },
}));

const on = (name: PaperName, more: Partial<PageSetup> = {}): PageSetup => ({ ...DEFAULT_SETUP, paper: { kind: "named", name }, ...more });
const smallest = (family: "iso" | "us"): PageSetup => ({ ...DEFAULT_SETUP, paper: { kind: "smallest", family } });

function sections(development: Development, kind: DocumentKind, setup: PageSetup, options = {}): readonly Section[] {
  const outcome = documentPages(development, kind, setup, options);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.sections;
}

const written = (items: readonly Item[]): string[] => items.flatMap((item) => (item.kind === "text" ? [item.text] : item.kind === "group" ? written(item.items) : []));
const listed = (items: readonly Item[]): TextItem[] => items.filter((item): item is TextItem => item.kind === "text");
const said = ({ items }: Page) => written(items).join(" ");
const group = ({ items }: Page) => items.find((item) => item.kind === "group");
const pagesOf = (all: readonly Section[]) => all.flatMap(({ pages }) => pages);

describe("documentPages: template", () => {
  it("takes the smallest paper of the family that holds the pattern in one piece", () => {
    expect(sections(small, "template", smallest("iso"))).toMatchObject([{ layout: "one", paper: "A4" }]);
    expect(sections(small, "template", smallest("us"))).toMatchObject([{ layout: "one", paper: "Letter" }]);
    expect(sections(large, "template", smallest("iso"))).toMatchObject([{ layout: "one", paper: "A0" }]);
  });

  it("draws the pattern at its true size", () => {
    const [page] = pagesOf(sections(small, "template", on("A4")));
    const outline = boundsOf(page?.items.filter((item) => item.kind === "path" && item.pen === "outline") ?? []);
    expect(outline.right - outline.left).toBeCloseTo(40 * Math.PI, 9);
    expect(outline.top - outline.bottom).toBeCloseTo(80, 9);
  });

  it("has a section for each piece and each end plate", () => {
    expect(sections(shop, "template", on("A3")).map(({ title }) => title)).toEqual(["pipe", "pipe top plate"]);
  });

  it("says what the piece is, what it is made of, what was added, and what to mind", () => {
    const [piece, plate] = sections(shop, "template", on("A3"), { date: "3 May" });
    const words = said(piece!.pages[0]!);
    for (const one of [
      "Vent", "pipe, piece 1 of 2", "Number off 3", "steel, 1.6 thick", "⌀100 outside", "outside up", "at the front", "lap 12 at the first seam edge", "hem 6 at the bottom",
      "Kerf and root gap are not included.", "1:1", "3 May", "Check the 100 mm ruler before cutting.", "gloves", "zinc", "governing code", "no correction",
    ]) expect(words).toContain(one);
    expect(said(plate!.pages[0]!)).toContain("less a gap of 1 all round");
  });

  it("cuts a roll as long as the pattern needs, either way about", () => {
    const [section] = sections(large, "template", { ...DEFAULT_SETUP, paper: { kind: "roll", width: 914 } });
    expect(section).toMatchObject({ layout: "one" });
    const { width, height } = section!.pages[0]!;
    expect(Math.min(width, height) === 914 || Math.max(width, height) === 914).toBe(true);
    expect(Math.max(width, height)).toBeLessThan(1200);
  });
});

describe("documentPages: tiles", () => {
  it("puts a cover first, then tiles named by row and column on the chosen paper", () => {
    const [section] = sections(large, "template", on("A4"));
    expect(section).toMatchObject({ layout: "tiles", paper: "A4" });
    expect(section!.pages.slice(0, 3).map(({ name }) => name)).toEqual(["cover", "A1", "A2"]);
    const { width, height } = paperNamed("A4");
    for (const page of section!.pages) expect([page.width, page.height]).toEqual(section!.landscape ? [height, width] : [width, height]);
  });

  it("takes the orientation with the fewer sheets", () => {
    const counts = (["portrait", "landscape", "best"] as const).map((orientation) => pagesOf(sections(large, "template", on("A4", { orientation }))).length);
    expect(counts[2]).toBe(Math.min(counts[0]!, counts[1]!));
  });

  it("lets neighbouring tiles share the overlap and puts their marks on the same places of the pattern", () => {
    const pages = pagesOf(sections(large, "template", on("A4", { overlap: 14 })));
    const a = pages.find(({ name }) => name === "A1")!, b = pages.find(({ name }) => name === "A2")!;
    const marks = (page: Page) => {
      const { move } = group(page)!;
      return page.items.flatMap((item) => (item.kind === "circle" && item.pen === "match mark" ? [`${(item.centre.x - move.x).toFixed(6)} ${(item.centre.y - move.y).toFixed(6)}`] : []));
    };
    const [first, second] = [group(a)!, group(b)!];
    expect(first.clip.right - first.move.x - (second.clip.left - second.move.x)).toBeCloseTo(14, 9);
    expect(marks(a).filter((mark) => marks(b).includes(mark))).toHaveLength(2);
  });

  it("gives the map a page of its own on small paper, and cuts a long title", () => {
    const long = developed({ ...pipeJob({ diameter: 150, length: 220 }), title: "A long title of a job ".repeat(5) });
    const [section] = sections(long, "template", { ...DEFAULT_SETUP, paper: { kind: "own", width: 148, height: 210 } });
    expect(section!.pages.slice(0, 3).map(({ name }) => name)).toEqual(["cover", "map", "A1"]);
    for (const { items, height } of section!.pages) expect(boundsOf(items).top).toBeLessThanOrEqual(height - 10 + 1e-9);
  });

  it("keeps match marks and the names of neighbours clear of the pattern, and trim lines clear of its lettering", () => {
    const wide = developed(pipeJob({ diameter: 640, length: 900, stations: 24, cuts: [planeCut({ angle: 35, direction: 180, at: "high", height: 900 }), openingCut({ shape: "round", diameter: 210 }, { direction: 250, height: 300 })] }));
    const pages = pagesOf(sections(wide, "template", on("A4"))).filter(({ name }) => name !== "cover");
    expect(pages.length).toBeGreaterThan(40);
    for (const page of pages) {
      const { items, move } = group(page)!;
      const space = clearSpace(0);
      space.take(items.map((item) => moveItem(item, move)));
      const isMark = (item: Item) => "pen" in item && item.pen === "match mark";
      for (const mark of page.items.filter(isMark)) expect(space.isFree(boundsOf([mark])), page.name).toBe(true);
      for (const name of listed(page.items).filter(({ clear }) => clear)) {
        expect(space.isFree(boundsOf([name])), `${page.name}: ${name.text}`).toBe(true);
        expect(page.items.filter(isMark).some((mark) => boxesOverlap(boundsOf([mark]), boundsOf([name])))).toBe(false);
      }
      expect(space.meetsFigures(page.items.filter((item) => "pen" in item && item.pen === "trim")), page.name).toBe(false);
    }
  });

  it("leaves paper between the outermost lines of the pattern and the border of its sheets", () => {
    const [section] = sections(large, "template", on("A4"));
    const { left, right, bottom, top } = boundsOf(group(section!.pages[1]!)!.items);
    const windows = section!.pages.flatMap((page) => group(page) ?? []).map(({ clip, move }) => ({ left: clip.left - move.x, right: clip.right - move.x, bottom: clip.bottom - move.y, top: clip.top - move.y }));
    expect(left - Math.min(...windows.map((one) => one.left))).toBeGreaterThan(1.9);
    expect(Math.max(...windows.map((one) => one.right)) - right).toBeGreaterThan(1.9);
    expect(bottom - Math.min(...windows.map((one) => one.bottom))).toBeGreaterThan(1.9);
    expect(Math.max(...windows.map((one) => one.top)) - top).toBeGreaterThan(1.9);
  });

  it("names the neighbour beyond each trim line", () => {
    const a1 = pagesOf(sections(large, "template", on("A4"))).find(({ name }) => name === "A1")!;
    const names = a1.items.flatMap((item) => (item.kind === "text" ? [item.text] : []));
    for (const name of ["A1", "A2", "B1"]) expect(names).toContain(name);
  });
});

describe("documentPages: very small sheets", () => {
  const own = (width: number, height: number, more: Partial<PageSetup> = {}): PageSetup => ({ ...DEFAULT_SETUP, paper: { kind: "own", width, height }, ...more });
  const setups = [own(150, 150), own(148, 148, { margin: 0 }), own(150, 150, { margin: 20 }), own(150, 2000, { margin: 20 }), own(148, 210), on("A4", { margin: 40 }), on("A4", { margin: 50 }), on("A4", { margin: 0 }), { ...DEFAULT_SETUP, paper: { kind: "roll", width: 150 } } as PageSetup];
  const titled = developed({ ...shopJob, title: "A title of a job that is as long as one may be, and says where the piece goes and who drew it, on which day of May, 2031" });

  it("print every field of the title block and every caution whole, inside the margins, on more pages where one is too small", () => {
    for (const setup of setups) {
      for (const development of [shop, titled]) {
        const [section] = sections(development, "template", setup, { date: "3 May" });
        const words = section!.pages.filter(({ name }) => !/^[A-Z]+\d+$/.test(name)).map(said).join(" ");
        for (const one of [...ENGLISH_SHEET.cautions, development.job.title, "steel, 1.6 thick", "hem 6 at the bottom", "Kerf and root gap are not included.", "3 May"]) expect(words, JSON.stringify(setup)).toContain(one);
        for (const { items, width, height, name } of section!.pages) {
          const { left, right, bottom, top } = boundsOf(items);
          expect(Math.min(left, bottom, width - right, height - top), name).toBeGreaterThanOrEqual(setup.margin - 1e-9);
          if (!items.some(({ kind }) => kind === "group")) expect(collisions(items), `${JSON.stringify(setup)} ${name}`).toEqual([]);
        }
      }
    }
  });

  it("print the whole calibration page, what it has no room to say on another", () => {
    for (const setup of setups) {
      const pages = pagesOf(sections(shop, "calibration", setup));
      const words = pages.map(said).join(" ");
      for (const one of [...ENGLISH_SHEET.calibration.steps, ENGLISH_SHEET.uncorrected]) expect(words, JSON.stringify(setup)).toContain(one);
      for (const { items, width, height } of pages) {
        const { left, right, bottom, top } = boundsOf(items);
        expect(Math.min(left, bottom, width - right, height - top)).toBeGreaterThanOrEqual(setup.margin - 1e-9);
        expect(collisions(items), JSON.stringify(setup)).toEqual([]);
      }
    }
  });

  it("name on every page the rulers that stand there", () => {
    for (const setup of setups) {
      for (const page of pagesOf(sections(shop, "template", setup))) {
        const [, length] = /Check the (\d+) mm ruler/.exec(said(page)) ?? [];
        const lines = page.items.filter((item) => item.kind === "path" && item.pen === "ruler").map((item) => boundsOf([item]));
        for (const [along, across] of [["right", "left"], ["top", "bottom"]] as const) {
          const other = along === "right" ? (["top", "bottom"] as const) : (["right", "left"] as const);
          expect(lines.some((line) => line[other[0]] === line[other[1]] && Math.abs(line[along] - line[across] - Number(length)) < 1e-9)).toBe(true);
        }
      }
    }
  });

  it("draw match marks clear of the rulers, however little the sheets share", () => {
    for (const overlap of [0, 2, 5, 10]) {
      for (const page of pagesOf(sections(large, "template", on("A4", { margin: 0, overlap }))).filter(({ name }) => name !== "cover")) {
        const { clip } = group(page)!;
        const marks = page.items.flatMap((item): { items: readonly Item[]; within: typeof clip | null }[] => (item.kind === "group" ? [{ items: item.items, within: item.clip }] : [{ items: [item], within: null }]))
          .flatMap(({ items, within }) => items.filter((item) => "pen" in item && item.pen === "match mark").map((item) => ({ item, within })));
        expect(marks.length, page.name).toBeGreaterThan(3);
        for (const { item, within } of marks) {
          const { left, bottom } = within ?? boundsOf([item]);
          expect(left).toBeGreaterThanOrEqual(clip.left);
          expect(bottom).toBeGreaterThanOrEqual(clip.bottom);
        }
      }
    }
  });
});

describe("documentPages: every page", () => {
  const correction = { printer: "Workshop", across: 1.01, along: 0.985 };
  const setups = [on("A4"), on("Letter", { correction }), on("A3", { margin: 15, orientation: "landscape", correction }), { ...DEFAULT_SETUP, paper: { kind: "own", width: 250, height: 250 } } as PageSetup];
  for (const setup of setups) {
    it(`keeps inside its margins in the file and on paper: ${JSON.stringify(setup.paper)}`, () => {
      for (const development of [shop, large]) {
        for (const kind of ["all", "calibration"] as const) {
          for (const page of pagesOf(sections(development, kind, setup))) {
            const { left, right, bottom, top } = boundsOf(page.items);
            for (const [x, y] of [[1, 1], [page.stretch.x, page.stretch.y]] as const) {
              expect(page.width / 2 - x * (page.width / 2 - left), page.name).toBeGreaterThanOrEqual(setup.margin - 1e-9);
              expect(page.width / 2 + x * (right - page.width / 2), page.name).toBeLessThanOrEqual(page.width - setup.margin + 1e-9);
              expect(page.height / 2 - y * (page.height / 2 - bottom), page.name).toBeGreaterThanOrEqual(setup.margin - 1e-9);
              expect(page.height / 2 + y * (top - page.height / 2), page.name).toBeLessThanOrEqual(page.height - setup.margin + 1e-9);
            }
          }
        }
      }
    });
  }

  it("states the correction, and turns it with the page", () => {
    for (const page of pagesOf(sections(shop, "all", on("A4", { correction })))) {
      expect(said(page)).toContain("Corrected across +1.00 %, along −1.50 %: Workshop, A4");
      expect(page.stretch).toEqual(page.width < page.height ? { x: 1.01, y: 0.985 } : { x: 0.985, y: 1.01 });
    }
  });

  it("shortens a title that is too long for the paper", () => {
    const job = { ...pipeJob({ diameter: 40, length: 80 }), title: "W".repeat(120) };
    for (const page of pagesOf(sections(developed(job), "all", on("A4")))) expect(boundsOf(page.items).right).toBeLessThanOrEqual(page.width - 10 + 1e-9);
  });
});

describe("documentPages: board drawing", () => {
  it("takes the largest usual scale that fits, and states it", () => {
    const [a4] = sections(large, "board", on("A4")), [a0] = sections(large, "board", on("A0"));
    expect(a0!.scale).toBeGreaterThan(a4!.scale);
    expect([1 / 10, 1 / 20]).toContain(a4!.scale);
    expect(said(a4!.pages[0]!)).toContain(`1:${Math.round(1 / a4!.scale)}`);
  });

  it("carries description and station table where there is room", () => {
    const [section] = sections(small, "board", on("A2"), { sentences: ["A pipe, 80 high."] });
    const words = said(section!.pages[0]!);
    expect(words).toContain("A pipe, 80 high.");
    expect(words).toContain("Station");
  });
});

describe("documentPages: what belongs to a board drawing", () => {
  const vent = developed({
    ...pipeJob({
      diameter: 100, length: 200, stations: 16, cuts: [planeCut({ angle: 35, height: 150 }), openingCut({ shape: "round", diameter: 40 }, { direction: 270, height: 70 })],
      fabrication: { seam: { kind: "lap", width: 12, share: 1 }, edges: { top: { kind: "flange", width: 10, slits: 10 }, bottom: { kind: "hem", width: 6 } } },
    }), title: "Vent",
  });
  const sentences = ["A pipe, ⌀100, 200 high.", "A round opening of 40 faces left, 70 up."];
  const board = (setup: PageSetup, development = vent) => sections(development, "board", setup, { sentences })[0]!;

  it("is a table with the openings' ordinates: 40 round a height of 70 at the station that meets its middle", () => {
    for (const setup of [on("A2"), on("A4"), on("A4", { margin: 40 })]) expect(pagesOf([board(setup)]).map(said).join(" ")).toMatch(/50 – 90/);
  });

  it("is what the shop adds, drawn and said; or that the pattern is net", () => {
    const [page] = board(on("A2")).pages;
    for (const one of ["bottom: hem 6", "top: flange 10", "lap 12 at the first seam edge, flange 10 at the top, hem 6 at the bottom"]) expect(said(page!)).toContain(one);
    expect(page!.items.filter((item) => "pen" in item && item.pen === "slit").length).toBeGreaterThan(10);
    expect(said(board(on("A2"), small).pages[0]!)).toContain("net, no allowances");
  });

  it("goes on to another sheet where the drawing leaves it no room, every station in its order", () => {
    const all = board(on("A4"), developed(pipeJob({ diameter: 100, length: 200, stations: 180, cuts: [planeCut({ angle: 35, height: 150 })] })));
    expect(all.pages.length).toBeGreaterThan(2);
    const numbers = all.pages.slice(1).flatMap(({ items }) => textsOf(items)).filter(({ align, text, height }) => align === "start" && height === 3.5 && /^\d+$/.test(text)).map(({ text }) => Number(text));
    expect(numbers).toEqual([...Array.from({ length: 180 }, (_, i) => i), 0]);
    for (const { items, width, height } of all.pages) {
      const { left, right, bottom, top } = boundsOf(items);
      expect(Math.min(left, bottom, width - right, height - top)).toBeGreaterThanOrEqual(10 - 1e-9);
    }
    for (const { items } of all.pages.slice(1)) expect(collisions(items)).toEqual([]);
  });

  it("is a piece of a roll no longer than drawing, description and table need", () => {
    for (const width of [297, 610, 914]) {
      const { pages, scale } = board({ ...DEFAULT_SETUP, paper: { kind: "roll", width } });
      expect(pages).toHaveLength(1);
      const [page] = pages;
      const long = page!.height === width ? page!.width : page!.height;
      const { bounds } = drawnBoard(vent, { width: 1, height: 1, at: { scale, arrangement: "under" } });
      expect(long).toBeLessThan(Math.max(bounds.top - bounds.bottom, bounds.right - bounds.left) + 200);
      expect(said(page!)).toContain("50 –");
    }
  });

  it("is refused with the sheet named as too small where it does not fit", () => {
    expect(documentPages(vent, "board", { ...DEFAULT_SETUP, paper: { kind: "own", width: 150, height: 150 } }, { sentences })).toEqual({
      ok: false, problems: [{ code: "paper-without-room", field: "paper", detail: { document: "Views and flat pattern" } }],
    });
  });
});

describe("documentPages: part list", () => {
  it("has a row a part with number off and mass", () => {
    const [section] = sections(shop, "parts", on("A4"));
    const words = said(section!.pages[0]!);
    for (const one of ["pipe top plate", "Mass in all kg", "steel, 1.6 thick"]) expect(words).toContain(one);
  });

  it("keeps letters of 3.5 mm, heads of 2.5 mm, and everything inside the frame on any paper, however narrow", () => {
    const own = (width: number, height: number): PageSetup => ({ ...DEFAULT_SETUP, paper: { kind: "own", width, height } });
    for (const setup of [on("A4"), on("A4", { orientation: "portrait" }), on("Letter", { orientation: "portrait" }), own(148, 210), own(160, 160), { ...DEFAULT_SETUP, paper: { kind: "roll", width: 160 } } as const, on("A3")]) {
      for (const development of [shop, manyParts]) {
        const [section] = sections(development, "parts", setup);
        const seen = section!.pages.flatMap(({ items }) => listed(items));
        const heights = seen.map(({ height }) => height);
        expect(Math.min(...heights)).toBe(2.5);
        const words = seen.map(({ text }) => text).join(" ");
        for (const one of ["pipe top plate", "Together", "steel, 1"]) expect(words).toContain(one);
        const figures = seen.filter(({ text }) => /^\d+\.\d{3}$/.test(text));
        expect(figures.length).toBeGreaterThan(3);
        expect(Math.min(...figures.map(({ height }) => height))).toBe(3.5);
        for (const { items, width } of section!.pages) {
          for (const text of listed(items)) expect(boundsOf([text]).right, text.text).toBeLessThanOrEqual(width - setup.margin + 0.01);
          expect(collisions(items)).toEqual([]);
        }
      }
    }
  });
});

describe("documentPages: bad input", () => {
  const codes = (setup: PageSetup, kind: DocumentKind = "template", options = {}) => {
    const outcome = documentPages(large, kind, setup, options);
    return outcome.ok ? [] : outcome.problems.map(({ code, field }) => `${code} ${field}`);
  };
  it("refuses paper smaller than its margins and rulers", () => {
    expect(codes({ ...DEFAULT_SETUP, margin: 50, paper: { kind: "own", width: 150, height: 400 } })).toEqual(["paper-without-room paper"]);
  });

  it("refuses an overlap larger than the page takes", () => {
    expect(codes({ ...DEFAULT_SETUP, margin: 20, overlap: 50, paper: { kind: "own", width: 150, height: 400 } })).toEqual(["overlap-too-large overlap"]);
  });

  it("refuses a correction beyond 5 %, a size out of range, and what is no number", () => {
    expect(codes(on("A4", { correction: { printer: "x", across: 1.06, along: 0.94 } }))).toEqual(["correction-too-large correction.across", "correction-too-large correction.along"]);
    expect(codes({ ...DEFAULT_SETUP, paper: { kind: "own", width: 20, height: 6000 } })).toEqual(["too-small paper.width", "too-large paper.height"]);
    expect(codes(on("A4", { margin: NaN, overlap: -1 }))).toEqual(["not-a-number margin", "too-small overlap"]);
  });

  it("refuses a scale that does not fit, more than 500 sheets, and nothing to print", () => {
    expect(codes(on("A4"), "board", { scale: 5 })).toEqual(["scale-too-large scale"]);
    const huge = documentPages(developed(pipeJob({ diameter: 3000, length: 9000 })), "template", on("A4"));
    expect(huge).toMatchObject({ ok: false, problems: [{ code: "too-many-sheets", field: "paper", max: 500 }] });
    expect(documentPages({ ...small, pieces: [] }, "template", on("A4"))).toMatchObject({ ok: false, problems: [{ code: "nothing-to-print" }] });
  });
});
