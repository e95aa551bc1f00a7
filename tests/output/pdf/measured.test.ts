import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { boundsOfItem } from "../../../src/drawing/bounds";
import { type Box, boxesOverlap } from "../../../src/drawing/box";
import type { Item } from "../../../src/drawing/display";
import { documentPages } from "../../../src/drawing/sheets/documentPages";
import type { Page } from "../../../src/drawing/sheets/page";
import { PAPERS } from "../../../src/drawing/sheets/papers";
import { DEFAULT_SETUP, type PaperChoice, type PrinterCorrection } from "../../../src/drawing/sheets/setup";
import { pdfDocument } from "../../../src/output/pdf/pdfDocument";
import { developed } from "../../support/developed";
import { type PdfFile, inkAlong, inkMiddles, pdfFile } from "../../support/poppler";
import { pipeJob, planeCut } from "../../support/pipeJob";

// Lengths in finished files, measured in pictures that poppler makes of them: a renderer that shares nothing with this program.

const DPI = 600;

/** mm. */
const TOLERANCE = 0.05;

const lettering = new Uint8Array(readFileSync(new URL("../../../src/app/print/lettering.otf", import.meta.url)));

/** A printer that prints 1 % short across the paper and 1.5 % long along it. */
const correction: PrinterCorrection = { printer: "Workshop", across: 1 / 0.99, along: 1 / 1.015 };

function pagesFor(paper: PaperChoice, girth: number, length: number, corrected: boolean): readonly Page[] {
  const setup = { ...DEFAULT_SETUP, paper, correction: corrected ? correction : null };
  const outcome = documentPages(developed(pipeJob({ diameter: girth / Math.PI, length })), "template", setup);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.pages;
}

interface Measured {
  readonly name: string;
  readonly page: Page;
  /** Of the pattern. */
  readonly girth: number;
  readonly length: number;
}

/** All that are named, one of one's own, and a roll, whose pages are as long as they need to be. */
const papers: readonly { readonly name: string; readonly choice: PaperChoice; readonly width: number; readonly height: number }[] = [
  ...PAPERS.map(({ name, width, height }) => ({ name, choice: { kind: "named", name } as const, width, height })),
  { name: "own size", choice: { kind: "own", width: 330, height: 488 }, width: 330, height: 488 },
  { name: "a roll", choice: { kind: "roll", width: 610 }, width: 610, height: 5000 },
];

/** Each paper whole and in tiles, as drawn and corrected. */
const cases: Measured[] = papers.flatMap(({ name, choice, width, height }) => [false, true].flatMap((corrected) => {
  const how = corrected ? "corrected" : "as drawn";
  const [whole] = pagesFor(choice, 120, 60, corrected);
  const girth = 1.25 * height, length = 0.5 * width;
  const tile = pagesFor(choice, girth, length, corrected).find((page) => page.name === "A1");
  if (!whole || !tile) throw new Error(`no pages on ${name}`);
  return [{ name: `${name}, whole, ${how}`, page: whole, girth: 120, length: 60 }, { name: `${name}, a tile, ${how}`, page: tile, girth, length }];
}));

/** Where an item of the page falls in the file, mm from the top left corner. */
function inFile({ width, height, stretch }: Page, { left, right, bottom, top }: Box) {
  const x = (one: number) => width / 2 + stretch.x * (one - width / 2), y = (one: number) => height - (height / 2 + stretch.y * (one - height / 2));
  return { left: x(left), top: y(top), width: stretch.x * (right - left), height: stretch.y * (top - bottom) };
}

let file: PdfFile;

beforeAll(async () => {
  const bytes = await pdfDocument(cases.map(({ page }) => page), { title: "Measured", lettering });
  if (!bytes) throw new Error("no file");
  file = pdfFile(bytes);
});

afterAll(() => file.remove());

describe("pages of a PDF as poppler draws them", () => {
  for (const [i, { name, page, girth, length }] of cases.entries()) {
    it(`${name}: both rulers of 100 mm and the pattern are true on the printer they are made for`, () => {
      for (const axis of ["x", "y"] as const) expect(Math.abs(rulerLength(i + 1, page, axis) / page.stretch[axis] - 100)).toBeLessThan(TOLERANCE);
      expect(Math.abs(edgesApart(i + 1, page, "y") / page.stretch.y - length)).toBeLessThan(TOLERANCE);
      if (name.includes("whole")) expect(Math.abs(edgesApart(i + 1, page, "x") / page.stretch.x - girth)).toBeLessThan(TOLERANCE);
    });
  }

  it("are as large as their paper", () => {
    const sizes = [...file.ask("pdfinfo", "-f", "1", "-l", String(cases.length)).matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)];
    expect(sizes).toHaveLength(cases.length);
    for (const [i, [, width, height]] of sizes.entries()) {
      const { page } = cases[i]!;
      // pdfinfo prints six figures.
      for (const [read, size] of [[width, page.width], [height, page.height]] as const) expect(Math.abs(Number(read) - (size * 72) / 25.4)).toBeLessThan(6 * 10 ** (Math.floor(Math.log10(Number(read))) - 6));
    }
  });

  it("carry the lettering as a subset in the file, and signs that can be read back", () => {
    expect(file.ask("pdffonts")).toMatch(/FlatwrightLetteringRegular\s.*\byes yes yes\b/);
    expect(file.ask("pdftotext", "-f", "1", "-l", "1")).toMatch(/⌀38\.2 mean/);
  });
});

/** From the first to the last long tick of the 100 mm ruler, mm in the file. */
function rulerLength(number: number, page: Page, axis: "x" | "y"): number {
  const lines = page.items.filter((item) => item.kind === "path" && item.pen === "ruler").map(boundsOfItem);
  const base = lines.find(({ left, right, bottom, top }) => Math.abs((axis === "x" ? right - left : top - bottom) - 100) < 1e-9 && (axis === "x" ? top === bottom : left === right));
  if (!base) throw new Error("no ruler");
  // Only ticks at whole tens reach 2.5 to 3 mm from the line.
  const strip = axis === "x"
    ? { left: base.left - 1, right: base.left + 101, bottom: base.bottom + 2.5, top: base.bottom + 3 }
    : { left: base.left - 3, right: base.left - 2.5, bottom: base.bottom - 1, top: base.bottom + 101 };
  const picture = file.raster(number, DPI, inFile(page, strip));
  const middles = inkMiddles(inkAlong(picture, axis), 1);
  expect(middles).toHaveLength(11);
  return (middles.at(-1)! - middles[0]!) / picture.density;
}

/** Between two straight edges of the outline, mm in the file: the lower and upper, or the first and last. */
function edgesApart(number: number, page: Page, axis: "x" | "y"): number {
  const drawn = page.items.flatMap((item) => (item.kind === "group" ? item.items.map((one) => ({ item: one, move: item.move })) : [{ item, move: { x: 0, y: 0 } }]));
  const boxes = drawn.map(({ item, move }) => ({ item, box: moved(item, move) }));
  const outline = boxes.find(({ item }) => item.kind === "path" && item.pen === "outline")?.box;
  if (!outline) throw new Error("no outline");
  // Frame, title block and rulers stand round the pattern, their boxes about it.
  const others = boxes.filter(({ item }) => !(item.kind === "path" && ["outline", "frame", "ruler"].includes(item.pen))).map(({ box }) => box);
  const at = (edge: "low" | "high") => {
    const place = axis === "x" ? (edge === "low" ? outline.left : outline.right) : edge === "low" ? outline.bottom : outline.top;
    const window = freeWindow(outline, others, axis, place);
    const picture = file.raster(number, DPI, inFile(page, window));
    const middles = inkMiddles(inkAlong(picture, axis), 1);
    expect(middles).toHaveLength(1);
    return middles[0]! / picture.density + (axis === "x" ? picture.left : picture.top);
  };
  return Math.abs(at("high") - at("low"));
}

/** A window of 3 × 1 mm over an edge, where nothing else is drawn. */
function freeWindow(outline: Box, others: readonly Box[], axis: "x" | "y", place: number): Box {
  for (let part = 3; part < 60; part += 1) {
    const along = axis === "x" ? outline.bottom + part : outline.left + part;
    const window = axis === "x" ? { left: place - 1.5, right: place + 1.5, bottom: along, top: along + 1 } : { left: along, right: along + 1, bottom: place - 1.5, top: place + 1.5 };
    if (!others.some((one) => boxesOverlap({ left: one.left - 0.3, right: one.right + 0.3, bottom: one.bottom - 0.3, top: one.top + 0.3 }, window))) return window;
  }
  throw new Error("no free stretch of the edge");
}

function moved(item: Item, { x, y }: { readonly x: number; readonly y: number }): Box {
  const { left, right, bottom, top } = boundsOfItem(item);
  return { left: left + x, right: right + x, bottom: bottom + y, top: top + y };
}

describe("tiles put together", () => {
  const radius = 60, height = 260, slope = Math.tan(Math.PI / 4);
  const job = pipeJob({ diameter: 2 * radius, length: 400, stations: 12, cuts: [planeCut({ angle: 45, direction: 180, height })] });

  for (const corrected of [null, correction]) {
    it(`give the outline back, ${corrected ? "corrected" : "as drawn"}: a mitre, y = h - r tan b cos(s / r) (check of the closed form in tests/values)`, async () => {
      const outcome = documentPages(developed(job), "template", { ...DEFAULT_SETUP, correction: corrected });
      if (!outcome.ok) throw new Error("no pages");
      const tiles = outcome.pages.slice(1);
      const bytes = await pdfDocument(tiles, { title: "Tiles", lettering });
      const own = pdfFile(bytes!);
      let points = 0, worst = 0;
      for (const [i, page] of tiles.entries()) {
        const group = page.items.find((item) => item.kind === "group");
        if (!group) throw new Error("no artwork");
        const picture = own.raster(i + 1, 300);
        // Between the stations, where nothing but the outline is drawn.
        for (let step = 0; step < 96; step++) {
          const s = ((step + 0.5) * 2 * Math.PI * radius) / 96;
          if (step % 8 === 0 || step % 8 === 7) continue;
          const y = height - radius * slope * Math.cos(s / radius);
          const at = { x: s + group.move.x, y: y + group.move.y };
          if (at.x < group.clip.left + 3 || at.x > group.clip.right - 3 || at.y < group.clip.bottom + 3 || at.y > group.clip.top - 3) continue;
          const off = strayed(picture, page, at, Math.atan(slope * Math.sin(s / radius)));
          points += 1;
          worst = Math.max(worst, off);
        }
      }
      own.remove();
      expect(points).toBeGreaterThan(60);
      expect(worst).toBeLessThan(TOLERANCE);
    });
  }

  /** How far the ink across an edge lies from where it should be, mm on the paper of the printer the page is made for. */
  function strayed({ grey, width, density }: ReturnType<PdfFile["raster"]>, page: Page, at: { x: number; y: number }, angle: number): number {
    const normal = { x: -Math.sin(angle), y: Math.cos(angle) };
    let weight = 0, moment = 0;
    for (let d = -0.7; d <= 0.7; d += 0.01) {
      const x = page.width / 2 + page.stretch.x * (at.x + d * normal.x - page.width / 2), y = page.height / 2 + page.stretch.y * (at.y + d * normal.y - page.height / 2);
      const ink = 1 - (grey[Math.floor((page.height - y) * density) * width + Math.floor(x * density)] ?? 255) / 255;
      weight += ink;
      moment += ink * d;
    }
    return weight > 0 ? Math.abs(moment / weight) : Infinity;
  }
});
