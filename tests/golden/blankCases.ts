import { fabricate, type Development } from "../../src/core/index";
import { blankDrawing } from "../../src/drawing/blank/blankDrawing";
import { board } from "../../src/drawing/board/board";
import { METRIC } from "../../src/drawing/figures";
import { patternAllowances } from "../../src/drawing/pattern/patternAllowances";
import { plateDrawing } from "../../src/drawing/blank/plateDrawing";
import { boundsOf } from "../../src/drawing/bounds";
import { growBox } from "../../src/drawing/box";
import type { Item } from "../../src/drawing/display";
import { svgDocument } from "../../src/output/svg/svgDocument";
import { developed } from "../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut, type PipeDescription } from "../support/pipeJob";
import type { GoldenCase } from "./goldenCase";

const none = { kind: "none" } as const;

function drawn(name: string, items: readonly Item[]): string {
  return svgDocument(items, { box: growBox(boundsOf(items), 5), title: name });
}

function pieceCase(name: string, pipe: PipeDescription): GoldenCase {
  return {
    name,
    draw: () => {
      const [made] = fabricate(developed(pipeJob(pipe))).pieces;
      if (!made) throw new Error("no piece");
      return drawn(name, blankDrawing(made));
    },
  };
}

function plateCase(name: string, end: "top" | "bottom", development: () => Development): GoldenCase {
  return {
    name,
    draw: () => {
      const plate = fabricate(development()).plates.find((one) => one.end === end);
      if (!plate) throw new Error(`no plate at the ${end}`);
      return drawn(name, plateDrawing(plate));
    },
  };
}

function boardCase(name: string, window: { width: number; height: number }, pipe: PipeDescription): GoldenCase {
  return {
    name,
    draw: () => {
      const development = developed(pipeJob(pipe));
      const { items } = board(development, { ...window, allowances: patternAllowances(development, METRIC) });
      return svgDocument(items, { box: { left: 0, right: window.width, bottom: 0, top: window.height }, title: name });
    },
  };
}

const slanted = planeCut({ angle: 35, direction: 180, height: 150 });
const hatch = openingCut({ shape: "round", diameter: 40 }, { direction: 270, height: 70 });
const closed = () => developed(pipeJob({
  diameter: 120, length: 240, thickness: 1, basis: "outside", cuts: [slanted],
  fabrication: { plates: { top: { fit: "outside", gap: 0 }, bottom: { fit: "inside", gap: 1.5 } } },
}));

const allRound = {
  seam: { kind: "grooved", width: 6, share: 1 / 3 }, edges: { top: { kind: "flange", width: 12, slits: 20 }, bottom: { kind: "hem", width: 6 } },
} as const;

export const BLANK_CASES: readonly GoldenCase[] = [
  pieceCase("blank, plain", { diameter: 90, length: 220, thickness: 1, basis: "outside", cuts: [planeCut({ angle: 35, direction: 180, height: 150 }), hatch], stations: 16, seam: { at: "shortest" }, face: "inside" }),
  pieceCase("blank with a grooved seam, a hem, and a slit flange on a slant", {
    diameter: 120, length: 240, thickness: 0.8, cuts: [slanted], stations: 24, seam: { at: "shortest" }, face: "inside",
    fabrication: allRound,
  }),
  pieceCase("blank with a wired edge over a hollow", {
    diameter: 100, length: 160, thickness: 0.8, cuts: [shapedCut({ shape: "hollow", radius: 70, centre: 0, height: 100 })], face: "inside",
    fabrication: { seam: { kind: "lap", width: 10, share: 1 }, edges: { top: none, bottom: { kind: "wired", wire: 3.2, thickness: true } } },
  }),
  pieceCase("template to wrap round a pipe", {
    diameter: 114.3, length: 200, thickness: 3, basis: "outside", cuts: [planeCut({ angle: 45, direction: 90, height: 120 })], stations: 16,
    fabrication: { purpose: "wrap", paper: 0.1, seam: { kind: "lap", width: 15, share: 0 } },
  }),
  pieceCase("blank of the opposite hand with a root gap", {
    diameter: 90, length: 220, thickness: 2, basis: "outside", cuts: [planeCut({ angle: 35, direction: 60, height: 150 }), hatch], stations: 12, face: "inside",
    fabrication: { hand: "opposite", seam: { kind: "butt", gap: 2 }, edges: { top: none, bottom: { kind: "double-hem", width: 5 } } },
  }),
  plateCase("end plate of a slanted end", "top", closed),
  plateCase("end plate of a square end", "bottom", closed),
  boardCase("board with allowances", { width: 320, height: 200 }, {
    diameter: 120, length: 240, thickness: 0.8, cuts: [slanted, hatch], seam: { at: "shortest" }, face: "inside", fabrication: allRound,
  }),
  boardCase("board with allowances, lying, the opposite hand", { width: 320, height: 200 }, {
    diameter: 120, length: 240, attitude: "lying", cuts: [planeCut({ angle: 35, direction: 60, height: 150 })], fabrication: { ...allRound, hand: "opposite" },
  }),
];
