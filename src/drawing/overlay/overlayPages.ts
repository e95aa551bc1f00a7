// The pages of an overlay, at the scale of the drawing it is laid on: one sheet where one takes it, else tiles.

import { type Development, type Piece, fabricate } from "../../core/index";
import { boundsOf } from "../bounds";
import { type Figures, METRIC } from "../figures";
import { scaleText } from "../sheets/scales";
import type { DocumentOutcome } from "../sheets/documentPages";
import type { PageSetup } from "../sheets/setup";
import { setupProblems } from "../sheets/setupProblems";
import type { SheetContext } from "../sheets/sheetContext";
import { ENGLISH_SHEET, type SheetWords } from "../sheets/sheetWords";
import { type TemplatePart, jobTitle } from "../sheets/templatePart";
import { templateSection } from "../sheets/templateSection";
import { overlayDrawing, type OverlayWanted } from "./overlayDrawing";
import { type OverlayWords, overlayWords } from "./overlayWords";
import { TRADE } from "../tradeWords";

export interface OverlayOptions {
  readonly figures?: Figures;
  readonly words?: SheetWords;
  readonly overlay?: OverlayWords;
  /** Whose drawing it is for; "" for anybody's. */
  readonly student?: string;
}

/** The overlay of every piece, or what stands in its way. */
export function overlayPages(development: Development, setup: PageSetup, wanted: OverlayWanted, options: OverlayOptions = {}): DocumentOutcome {
  const problems = setupProblems(setup);
  if (problems.length > 0) return { ok: false, problems };
  const { figures = METRIC, words = ENGLISH_SHEET, overlay = overlayWords(TRADE["stretch-out"]), student = "" } = options;
  const context: SheetContext = { development, fabrication: fabricate(development), setup, figures, words: { ...words, checkRuler: overlay.checkRuler }, sentences: [], date: "", scale: wanted.scale };
  const parts = development.pieces.filter(({ pattern }) => pattern.loops.length > 0).map((piece) => overlayPart(context, piece, wanted, overlay, student));
  if (parts.length === 0) return { ok: false, problems: [{ code: "nothing-to-print", field: "" }] };
  const sections = parts.map((part) => templateSection(context, part));
  return { ok: true, sections, pages: sections.flatMap(({ pages }) => pages), notices: [] };
}

function overlayPart({ development, figures, words }: SheetContext, piece: Piece, wanted: OverlayWanted, overlay: OverlayWords, student: string): TemplatePart {
  const art = overlayDrawing(piece, wanted);
  const { field } = words;
  const { seam, face } = development.job.development;
  const outlines = art.flatMap((item) => (item.kind === "path" && item.closed ? [item.segments] : []));
  return {
    name: overlay.title, art, bounds: boundsOf(art), outlines, scale: scaleText(wanted.scale), cautions: overlay.cautions,
    heading: [overlay.title, jobTitle(development, words), ...(student === "" ? [] : [student])].join(" · "),
    cells: [
      { label: field.job, value: jobTitle(development, words), height: 5, large: 2 },
      ...(student === "" ? [] : [{ label: overlay.student, value: student }]),
      { label: overlay.allowed, value: `± ${figures.length(wanted.tolerance)}` },
      { label: field.girth, value: wanted.stepped ? overlay.stepped : overlay.exact },
      { label: field.face, value: face === "inside" ? words.insideUp : words.outsideUp },
      { label: field.seamPlace, value: seam.at === "angle" ? words.seamAtAngle(figures.angle(seam.angle)) : words.seamAt[seam.at] },
    ],
  };
}
