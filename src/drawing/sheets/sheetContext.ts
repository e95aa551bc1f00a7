// What every page of a document needs to know.

import type { Development, Fabrication } from "../../core/index";
import type { Figures } from "../figures";

import { type PageBands, pageBands } from "./pageBands";
import type { PaperField } from "./paperField";
import type { NamedPaper } from "./section";
import type { PageSetup } from "./setup";
import type { SheetWords } from "./sheetWords";
import type { Cell } from "./titleBlock";

export interface SheetContext {
  readonly development: Development;
  readonly fabrication: Fabrication;
  readonly setup: PageSetup;
  readonly figures: Figures;
  readonly words: SheetWords;
  /** The description, clause by clause. */
  readonly sentences: readonly string[];
  /** As to be printed; "" leaves the field to be filled in. */
  readonly date: string;
  /** Paper mm a real mm of a board drawing; null for the largest usual one that fits. */
  readonly scale: number | null;
}

/** What is done about the printer's error, for every page. */
export function correctionText({ setup: { correction }, words }: Pick<SheetContext, "setup" | "words">, paper: string): string {
  if (!correction) return words.uncorrected;
  return words.corrected(correction.printer, paper, percent(correction.across), percent(correction.along));
}

/** "+0.50" */
function percent(factor: number): string {
  const value = ((factor - 1) * 100).toFixed(2);
  return factor >= 1 ? `+${value}` : value.replace("-", "−");
}

/** The bands of a page of this paper, with its heading, the number of the sheet and, of a tile, its name; `longest` of the headings in the document. */
export function bandsOf(context: Pick<SheetContext, "setup" | "words">, { box }: Pick<PaperField, "box">, paper: NamedPaper, heading: string, sheet = "", name = "", longest = heading): PageBands {
  return pageBands(box, { name, check: context.words.checkRuler, correction: correctionText(context, paper.name), heading, longest, sheet });
}

/** What every title block ends with. */
export function footCells({ words, date }: SheetContext, scale: string, sheet: string): Cell[] {
  const { field } = words;
  return [{ label: field.scale, value: scale }, { label: field.sheetNumber, value: sheet }, { label: field.date, value: date }];
}
