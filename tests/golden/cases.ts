import { readFileSync, readdirSync } from "node:fs";
import { type Development, develop } from "../../src/core/index";
import { type BoardOptions, board } from "../../src/drawing/board/board";
import type { Box } from "../../src/drawing/box";
import { pictorial } from "../../src/drawing/pictorial/pictorial";
import { pictorialSheet } from "../../src/drawing/pictorial/pictorialSheet";
import { isometric } from "../../src/drawing/pictorial/pictorialSight";
import { projectionLines } from "../../src/drawing/station/projectionLines";
import { projectionSymbol } from "../../src/drawing/projectionSymbol";
import { lessonPages } from "../../src/drawing/lesson/lessonPages";
import { DEFAULT_LESSON, type LessonSheets } from "../../src/drawing/lesson/lessonSheets";
import type { LessonKind } from "../../src/drawing/lesson/lessonKinds";
import { type DocumentKind, documentPages } from "../../src/drawing/sheets/documentPages";
import type { PaperName } from "../../src/drawing/sheets/papers";
import { DEFAULT_SETUP, type PageSetup } from "../../src/drawing/sheets/setup";
import { drawnAt } from "../../src/drawing/steps/drawnAt";
import { steps } from "../../src/drawing/steps/steps";
import type { Way } from "../../src/drawing/steps/way";
import { svgDocument } from "../../src/output/svg/svgDocument";
import { developed } from "../support/developed";
import { type Job, openingCut, pipeJob, planeCut, shapedCut } from "../support/pipeJob";
import { BLANK_CASES } from "./blankCases";
import type { GoldenCase } from "./goldenCase";

const EXAMPLES = new URL("../../src/app/examples/", import.meta.url);
const DESK = { width: 320, height: 200 };
const PHONE = { width: 160, height: 260 };

function example(name: string): Development {
  const outcome = develop(JSON.parse(readFileSync(new URL(name, EXAMPLES), "utf8")));
  if (!outcome.ok) throw new Error(`${name}: ${JSON.stringify(outcome.problems)}`);
  return outcome.development;
}

function boardCase(name: string, development: () => Development, options: BoardOptions, station?: number): GoldenCase {
  return {
    name,
    draw: () => {
      const made = development();
      const drawn = board(made, options);
      const box: Box = { left: 0, right: options.width, bottom: 0, top: options.height };
      return svgDocument([...drawn.items, ...(station === undefined ? [] : projectionLines(drawn, made, station))], { box, title: name });
    },
  };
}

function stepCase(name: string, development: () => Development, way: Way, step: string, station: number | null): GoldenCase {
  return {
    name,
    draw: () => {
      const made = development();
      const on = board(made, DESK);
      const order = steps(on, made, { way });
      const { construction, items } = drawnAt(on, order, order.findIndex((one) => one.name === step), station);
      return svgDocument([...construction, ...items], { box: { left: 0, right: DESK.width, bottom: 0, top: DESK.height }, title: name });
    },
  };
}

function sheetCase(name: string, development: () => Development, kind: DocumentKind, paper: PageSetup["paper"], page: string): GoldenCase {
  return {
    name,
    draw: () => {
      const outcome = documentPages(development(), kind, { ...DEFAULT_SETUP, paper }, { date: "2026-11-25", sentences: ["The description,", "clause by clause."] });
      const found = outcome.ok && outcome.pages.find((one) => one.name === page);
      if (!found) throw new Error(`no page ${page}`);
      return svgDocument(found.items, { box: { left: 0, right: found.width, bottom: 0, top: found.height }, title: name });
    },
  };
}

function lessonCase(name: string, development: () => Development, kind: LessonKind, paper: PaperName, more: Partial<LessonSheets> = {}, page = 0): GoldenCase {
  return {
    name,
    draw: () => {
      const school = { ...DEFAULT_LESSON.school, school: "Harbour Road School", marksMax: 15 };
      const setup: PageSetup = { ...DEFAULT_SETUP, paper: { kind: "named", name: paper } };
      const outcome = lessonPages({ ...DEFAULT_LESSON, development: development(), kind, setup, school, text: ["The description of the piece.", "What is to be done."], ...more });
      const found = outcome.ok && outcome.pages[page];
      if (!found) throw new Error(`no page ${page}`);
      return svgDocument(found.items, { box: { left: 0, right: found.width, bottom: 0, top: found.height }, title: name });
    },
  };
}

function pictorialCase(name: string, file: string, fraction: number, station: number): GoldenCase {
  return {
    name,
    draw: () => {
      const { job: { drawing: { projection } }, pieces: [piece] } = example(file);
      if (!piece) throw new Error(`${file}: no piece`);
      const drawn = pictorial(pictorialSheet(piece, projection), { width: 80, height: 80, fraction, sight: isometric(projection), station });
      return svgDocument(drawn.items, { box: { left: 0, right: 80, bottom: 0, top: 80 }, title: name });
    },
  };
}

const made = (job: Job) => () => developed(job);
const third = (job: Job): Job => ({ ...job, drawing: { ...job.drawing, projection: "third" } });

const roof = pipeJob({ diameter: 80, length: 160, cuts: [planeCut({ angle: 45, direction: 0, height: 120 })], seam: { at: "shortest" } });
const inPieces = pipeJob({ diameter: 80, length: 160, cuts: [
  openingCut({ shape: "rectangle", width: 90, length: 20, turn: 0 }, { id: "slit", direction: 90, height: 80 }),
  openingCut({ shape: "rectangle", width: 90, length: 20, turn: 0 }, { id: "slit-2", direction: 270, height: 80 }),
] });
const through = pipeJob({ diameter: 100, length: 150, thickness: 2, basis: "outside", stations: 16, face: "inside", cuts: [
  openingCut({ shape: "slot", width: 20, length: 60, turn: 45 }, { id: "slot", direction: 30, height: 90, offset: 12, through: "both" }),
  shapedCut({ shape: "step", low: 110, high: 140, rising: "right", position: 20 }, { direction: 90 }),
] });
const steep = pipeJob({ diameter: 60, length: 300, cuts: [planeCut({ angle: 85, direction: 200, height: 150 })] });
/** The classic of the drawing board: a cylinder cut at 45°. */
const classic = pipeJob({ diameter: 40, length: 70, cuts: [planeCut({ angle: 45, direction: 90, height: 45 })], seam: { at: "shortest" }, face: "inside" });
const many = pipeJob({ diameter: 120, length: 90, stations: 360, cuts: [planeCut({ angle: 20, direction: 75, height: 60 })] });

export const CASES: readonly GoldenCase[] = [
  ...readdirSync(EXAMPLES).filter((name) => name.endsWith(".json")).sort().flatMap((name) => [
    boardCase(`${name.replace(".json", "")} on a desk`, () => example(name), DESK),
    boardCase(`${name.replace(".json", "")} on a phone`, () => example(name), PHONE),
  ]),
  boardCase("station 5 in hand, upright", () => example("1-lean-to-vent.json"), DESK, 5),
  boardCase("station 9 in hand, lying", () => example("3-drying-hood.json"), { ...PHONE, arrangement: "projection" }, 9),
  boardCase("plain pipe", made(pipeJob({ diameter: 60, length: 100 })), DESK),
  boardCase("mouth away from the viewer", made(roof), DESK),
  boardCase("mouth away from the viewer, lying, third angle", made(third({ ...roof, part: { ...roof.part, attitude: "lying" } })), DESK),
  boardCase("pipe in two pieces", made(inPieces), DESK),
  boardCase("slot through both walls beside a step", made(through), DESK),
  boardCase("steep plane that runs out through the base", made(steep), DESK),
  boardCase("360 stations", made(many), DESK),
  stepCase("step, by hand: up to the fifth ordinate", () => example("1-lean-to-vent.json"), "hand", "carry", 5),
  stepCase("step, lying: the other view completed", () => example("3-drying-hood.json"), "screen", "complete", null),
  stepCase("step, third angle: the curve, thin", () => example("2-ridge-cap.json"), "screen", "curve", null),
  stepCase("last step over its construction", () => example("4-chart-lamp.json"), "hand", "dimensions", null),
  pictorialCase("pictorial view of a finished pipe", "2-ridge-cap.json", 1, 3),
  pictorialCase("pictorial view of a pipe half rolled up", "1-lean-to-vent.json", 0.5, 4),
  pictorialCase("pictorial view of a lying pipe, nearly closed", "3-drying-hood.json", 0.9, 12),
  sheetCase("template on one sheet", () => example("1-lean-to-vent.json"), "template", { kind: "smallest", family: "iso" }, "1"),
  sheetCase("template on American paper in inches", () => example("5-pier-strut.json"), "template", { kind: "named", name: "Letter" }, "A1"),
  sheetCase("cover of a tiled template", () => example("2-ridge-cap.json"), "template", { kind: "named", name: "A4" }, "cover"),
  sheetCase("tile of a template", () => example("2-ridge-cap.json"), "template", { kind: "named", name: "A4" }, "A2"),
  sheetCase("board drawing on a framed sheet", () => example("1-lean-to-vent.json"), "board", { kind: "named", name: "A3" }, "1"),
  sheetCase("part list", () => example("1-lean-to-vent.json"), "parts", { kind: "named", name: "A4" }, "1"),
  sheetCase("calibration page", () => example("1-lean-to-vent.json"), "calibration", { kind: "named", name: "A4" }, "1"),
  lessonCase("question on a sheet", made(classic), "question", "A4"),
  lessonCase("question begun, third angle, lying", () => example("3-drying-hood.json"), "started", "A3", { projection: "third" }),
  lessonCase("key by hand", made(classic), "key", "A4", { way: "hand" }),
  lessonCase("figures of a key with its marks", made(classic), "key", "A4", { marking: [{ text: "Views", marks: 4 }, { text: "Ordinates", marks: 8, expected: "25 to 65" }], tolerance: { length: 1, angle: 1 } }, 1),
  lessonCase("construction in pictures", made(classic), "steps", "A4", { stepsPerPage: 2 }, 3),
  lessonCase("card model", made(classic), "card", "A4"),
  ...BLANK_CASES,
  {
    name: "projection symbols",
    draw: () => svgDocument([...projectionSymbol("first", { x: 15, y: 10 }), ...projectionSymbol("third", { x: 55, y: 10 })],
      { box: { left: 0, right: 80, bottom: 0, top: 20 }, title: "first and third angle" }),
  },
];
