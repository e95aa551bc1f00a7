import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { METRIC } from "../../../src/drawing/figures";
import { lessonPages } from "../../../src/drawing/lesson/lessonPages";
import { DEFAULT_LESSON } from "../../../src/drawing/lesson/lessonSheets";
import type { LessonKind } from "../../../src/drawing/lesson/lessonKinds";
import type { Page } from "../../../src/drawing/sheets/page";
import { DEFAULT_SETUP } from "../../../src/drawing/sheets/setup";
import { pdfDocument } from "../../../src/output/pdf/pdfDocument";
import { developed } from "../../support/developed";
import { type PdfFile, inkAlong, inkMiddles, pdfFile } from "../../support/poppler";
import { pipeJob, planeCut } from "../../support/pipeJob";

// School sheets as finished files: their words as poppler reads them, their lengths in pictures that poppler makes.

const DPI = 600;

/** mm. */
const TOLERANCE = 0.05;

const RADIUS = 20, HEIGHT = 45;

/** A cylinder of ⌀40 cut at 45°, 45 up on its axis: r (1 − cos θ) + 25 from the seam at the shortest element (elementary). */
const development = developed(pipeJob({ diameter: 2 * RADIUS, length: 70, cuts: [planeCut({ angle: 45, direction: 90, height: HEIGHT })], seam: { at: "shortest" }, face: "inside" }));
const ordinates = Array.from({ length: 7 }, (_, k) => METRIC.length(HEIGHT - RADIUS * Math.cos((k * Math.PI) / 6)));

const lettering = new Uint8Array(readFileSync(new URL("../../../src/app/print/lettering.otf", import.meta.url)));

function firstPage(kind: LessonKind): Page {
  const outcome = lessonPages({ ...DEFAULT_LESSON, development, kind, setup: { ...DEFAULT_SETUP, paper: { kind: "named", name: "A4" } }, text: ["Develop the surface."] });
  if (!outcome.ok || outcome.scale !== 1) throw new Error(JSON.stringify(outcome));
  return outcome.pages[0]!;
}

const pages = { question: firstPage("question"), started: firstPage("started"), key: firstPage("key"), card: firstPage("card") };
const numbers = { question: 1, started: 2, key: 3, card: 4 };

let file: PdfFile;

beforeAll(async () => {
  const bytes = await pdfDocument(Object.values(pages), { title: "Lesson", lettering });
  if (!bytes) throw new Error("no file");
  file = pdfFile(bytes);
});

afterAll(() => file.remove());

const words = (kind: keyof typeof numbers) => file.ask("pdftotext", "-layout", "-f", String(numbers[kind]), "-l", String(numbers[kind])).split(/\s+/);

describe("school sheets as poppler reads them", () => {
  it("the question gives the measures that define the piece, and no ordinate, stretch-out or spacing", () => {
    const said = words("question");
    for (const figure of ["⌀40", "45", "45°", "1:1", "Develop"]) expect(said).toContain(figure);
    const answers = [...ordinates.filter((figure) => figure !== String(HEIGHT)), METRIC.length(2 * Math.PI * RADIUS), METRIC.length((Math.PI * RADIUS) / 6)];
    for (const kind of ["question", "started"] as const) for (const figure of answers) expect(words(kind)).not.toContain(figure);
  });

  it("the key gives the stretch-out as π × diameter and in chords, with what they are short", () => {
    const said = words("key").join(" ");
    const girth = 2 * Math.PI * RADIUS, chords = 24 * RADIUS * Math.sin(Math.PI / 12);
    expect(said).toContain(`π × 40 = ${METRIC.length(girth)}`);
    expect(said).toContain(`12 chords of ${METRIC.length(chords / 12)} = ${METRIC.length(chords)}, ${METRIC.length(girth - chords)} short`);
  });

  it("the key gives every ordinate, upright beside its element", () => {
    // Turned letters come out word by word without a layout.
    const said = file.ask("pdftotext", "-raw", "-f", "3", "-l", "3").split(/\s+/);
    for (const figure of ordinates) expect(said).toContain(figure);
  });
});

describe("school sheets as poppler draws them", () => {
  it("a development begun is as long as the stretch-out, divided into even spaces", () => {
    const line = pages.started.items.find((item) => item.kind === "path" && item.pen === "stretch-out");
    if (line?.kind !== "path" || !line.segments[0]) throw new Error("no line");
    const { from, to } = line.segments[0];
    // The ticks stand over the line: a strip through them.
    const strip = { left: from.x - 2, top: pages.started.height - from.y - 1.6, width: to.x - from.x + 4, height: 0.6 };
    const raster = file.raster(numbers.started, DPI, strip);
    const ticks = inkMiddles(inkAlong(raster, "x"), 3).map((pixel) => pixel / raster.density);
    expect(ticks).toHaveLength(13);
    for (const [i, tick] of ticks.entries()) expect(Math.abs(tick - ticks[0]! - (i * Math.PI * RADIUS) / 6)).toBeLessThan(TOLERANCE);
  });

  it("the axis of the front view stands in the same place on question, question begun and key", () => {
    const axes = (["question", "started", "key"] as const).map((kind) => {
      const circle = pages[kind].items.find((item) => item.kind === "path" && item.pen === "visible edge" && item.segments[0]?.kind === "arc");
      if (circle?.kind !== "path" || circle.segments[0]?.kind !== "arc") throw new Error("no circle");
      const { x, y } = circle.segments[0].centre;
      // Left and right edge of the circle, in a strip through its middle but off the level centre line.
      const raster = file.raster(numbers[kind], DPI, { left: x - RADIUS - 1, top: pages[kind].height - y + 0.8, width: 2, height: 0.3 });
      return raster.left + inkMiddles(inkAlong(raster, "x"), 3)[0]! / raster.density;
    });
    for (const axis of axes) expect(Math.abs(axis - axes[0]!)).toBeLessThan(TOLERANCE);
  });
});
