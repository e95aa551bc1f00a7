// A whole document, ready for paper: template, board drawing, part list, calibration page, or all that the shop needs.

import { type Development, type Problem, fabricate } from "../../core/index";
import { type Figures, METRIC } from "../figures";
import { boardSection } from "./boardSection";
import { calibrationSection } from "./calibrationSection";
import { tileLayouts } from "./layouts";
import type { Page } from "./page";
import { paperField } from "./paperField";
import { partsSection } from "./partsSection";
import type { Section } from "./section";
import type { PageSetup } from "./setup";
import { setupProblems } from "./setupProblems";
import { type SheetContext, bandsOf } from "./sheetContext";
import { ENGLISH_SHEET, type SheetWords } from "./sheetWords";
import { type TemplatePart, templateParts } from "./templatePart";
import { templateSection } from "./templateSection";
import { windowsAlong } from "./tiles";

/** "all": board drawing, part list and template, in this order. */
export type DocumentKind = "template" | "board" | "parts" | "calibration" | "all";

export interface DocumentOptions {
  readonly figures?: Figures;
  readonly words?: SheetWords;
  /** The description, clause by clause, for the board drawing. */
  readonly sentences?: readonly string[];
  /** As to be printed; left to be filled in by hand unless given. */
  readonly date?: string;
  /** Of the board drawing, paper mm a real mm; the largest usual one unless given. */
  readonly scale?: number;
}

export type DocumentOutcome =
  | {
    readonly ok: true;
    readonly sections: readonly Section[];
    readonly pages: readonly Page[];
    /** What the shop asked for and cannot have: it is left off. */
    readonly notices: readonly Problem[];
  }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** More sheets than this are a slip of the keyboard. */
export const MOST_SHEETS = 500;

/** The pages of a document on the paper chosen, or what stands in their way. */
export function documentPages(development: Development, kind: DocumentKind, setup: PageSetup, options: DocumentOptions = {}): DocumentOutcome {
  const faults = setupProblems(setup);
  if (faults.length > 0) return { ok: false, problems: faults };
  const { figures = METRIC, words = ENGLISH_SHEET, sentences = [], date = "", scale = null } = options;
  const fabrication = fabricate(development);
  const context: SheetContext = { development, fabrication, setup, figures, words, sentences, date, scale };
  const parts = templateParts(development, fabrication, figures, words);
  const asksFor = (one: DocumentKind) => kind === one || kind === "all";
  if (kind !== "calibration" && parts.length === 0) return { ok: false, problems: [{ code: "nothing-to-print", field: "" }] };
  const sheets = asksFor("template") ? parts.reduce((sum, part) => sum + sheetsOf(context, part), 0) : 0;
  if (sheets > MOST_SHEETS) return { ok: false, problems: [{ code: "too-many-sheets", field: "paper", value: sheets, max: MOST_SHEETS }] };
  const sections: Section[] = [];
  if (asksFor("board")) {
    const board = boardSection(context);
    if (!board) return { ok: false, problems: [scale === null ? { code: "paper-without-room", field: "paper", detail: { document: words.document.board } } : { code: "scale-too-large", field: "scale", value: scale }] };
    sections.push(board);
  }
  if (asksFor("parts")) sections.push(partsSection(context));
  if (asksFor("template")) sections.push(...parts.map((part) => templateSection(context, part)));
  if (kind === "calibration") sections.push(calibrationSection(context));
  return { ok: true, sections, pages: sections.flatMap(({ pages }) => pages), notices: fabrication.problems };
}

/** At most how many sheets a part takes, blank ones counted. */
function sheetsOf(context: SheetContext, { bounds }: TemplatePart): number {
  const { setup } = context;
  const width = bounds.right - bounds.left, height = bounds.top - bounds.bottom;
  const counts = tileLayouts(setup, { width, height }).map(({ paper, landscape }) => {
    const { room } = bandsOf(context, paperField(paper, landscape, setup), paper, "");
    return windowsAlong(width, room.right - room.left, setup.overlap) * windowsAlong(height, room.top - room.bottom, setup.overlap);
  });
  return Math.min(...counts);
}
