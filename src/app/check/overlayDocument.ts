import type { Development } from "../../core/index";
import type { OverlayWanted } from "../../drawing/overlay/overlayDrawing";
import { overlayPages } from "../../drawing/overlay/overlayPages";
import { overlayWords } from "../../drawing/overlay/overlayWords";
import type { DocumentOutcome } from "../../drawing/sheets/documentPages";
import { sheetWords } from "../../drawing/sheets/sheetWords";
import { setupOf, useOutput } from "../output/choices";
import { correctionOn, usePrinters } from "../output/printers";
import type { Format } from "../quantity/format";

/** The pages of an overlay on the paper, and corrected for the printer, chosen for all that is printed. */
export function overlayDocument(development: Development, wanted: OverlayWanted, format: Format, student: string): DocumentOutcome {
  const choices = useOutput.getState();
  const options = { figures: format, words: sheetWords(format.trade), overlay: overlayWords(format.trade), student };
  const plain = overlayPages(development, setupOf(choices), wanted, options);
  const paper = plain.ok ? plain.sections[0]?.paper : undefined;
  const correction = paper === undefined || choices.printer === null ? null : correctionOn(usePrinters.getState().all, choices.printer, paper);
  return correction ? overlayPages(development, { ...setupOf(choices), correction }, wanted, options) : plain;
}
