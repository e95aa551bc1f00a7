import { create } from "zustand";
import { PAPER_NAMES, type PaperName } from "../../drawing/sheets/papers";
import { DEFAULT_SETUP, type PageSetup, type PaperChoice } from "../../drawing/sheets/setup";
import type { Curves } from "../../output/dxf/entity";
import { isAmerican } from "./isAmerican";

// What is to be made of the job and on what, kept on this device.

export const documents = ["template", "board", "parts", "all"] as const;
export const files = ["dxf", "svg", "table", "list"] as const;
export type DocumentWanted = (typeof documents)[number];
export type Wanted = DocumentWanted | (typeof files)[number];

/** A paper by its name, one of one's own size, a roll, or the smallest of a family. */
export type PaperWanted = PaperName | "own" | "roll" | "smallest-iso" | "smallest-us";

export interface OutputChoices {
  readonly what: Wanted;
  readonly paper: PaperWanted;
  /** Of a paper of one's own, of a roll; mm. */
  readonly width: number;
  readonly height: number;
  readonly orientation: PageSetup["orientation"];
  /** mm */
  readonly margin: number;
  readonly overlap: number;
  /** Of the board drawing, paper mm a real mm; null: the largest usual one. */
  readonly scale: number | null;
  /** The name of the printer whose correction is used. */
  readonly printer: string | null;
  /** How far a curve of a cut file may stray, mm. */
  readonly tolerance: number;
  /** How the curves of a DXF are written. */
  readonly curves: Curves;
  /** Whether the parts of a cut file lie side by side in one, or each has its own. */
  readonly parts: "together" | "apart";
}

const place = "flatwright.output";

const kinds: { readonly [K in keyof OutputChoices]: (value: unknown) => boolean } = {
  what: oneOf([...documents, ...files]),
  paper: oneOf(["own", "roll", "smallest-iso", "smallest-us", ...PAPER_NAMES]),
  width: isNumber,
  height: isNumber,
  orientation: oneOf(["best", "portrait", "landscape"]),
  margin: isNumber,
  overlap: isNumber,
  scale: (value) => value === null || isNumber(value),
  printer: (value) => value === null || typeof value === "string",
  tolerance: isNumber,
  curves: oneOf(["arcs", "splines"]),
  parts: oneOf(["together", "apart"]),
};

export const useOutput = create<OutputChoices>()(() => ({ ...initial(), ...kept() }));

/** Changes some of the choices and keeps them when the browser can. */
export function choose(change: Partial<OutputChoices>): void {
  useOutput.setState(change);
  try {
    localStorage.setItem(place, JSON.stringify(useOutput.getState()));
  } catch {
    // Without storage the choices last until the page is left; the banner of the job says that nothing is kept.
  }
}

/** The pages' setup that these choices ask for, without a printer's correction. */
export function setupOf({ paper, width, height, orientation, margin, overlap }: OutputChoices): PageSetup {
  return { paper: paperOf(paper, width, height), orientation, margin, overlap, correction: null };
}

function paperOf(paper: PaperWanted, width: number, height: number): PaperChoice {
  switch (paper) {
    case "own":
      return { kind: "own", width, height };
    case "roll":
      return { kind: "roll", width };
    case "smallest-iso":
      return { kind: "smallest", family: "iso" };
    case "smallest-us":
      return { kind: "smallest", family: "us" };
    default:
      return { kind: "named", name: paper };
  }
}

function initial(): OutputChoices {
  const { orientation, margin, overlap } = DEFAULT_SETUP;
  const paper = isAmerican() ? "smallest-us" : "smallest-iso";
  return { what: "template", paper, width: 600, height: 900, orientation, margin, overlap, scale: null, printer: null, tolerance: 0.01, curves: "arcs", parts: "together" };
}

function kept(): Partial<OutputChoices> {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(place) ?? "{}");
    if (typeof read !== "object" || read === null) return {};
    return Object.fromEntries(Object.entries(read).filter(([name, value]) => name in kinds && kinds[name as keyof OutputChoices](value)));
  } catch {
    return {};
  }
}

function oneOf(values: readonly string[]) {
  return (value: unknown) => typeof value === "string" && values.includes(value);
}

function isNumber(value: unknown): boolean {
  return typeof value === "number" && Number.isFinite(value);
}
