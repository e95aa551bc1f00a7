import { useDeferredValue, useMemo } from "react";
import { documentPages, type DocumentOptions, type DocumentOutcome } from "../../drawing/sheets/documentPages";
import type { PageSetup } from "../../drawing/sheets/setup";
import { sheetWords } from "../../drawing/sheets/sheetWords";
import type { Development } from "../../core/index";
import { sentencesOf } from "../describe/sentenceText";
import type { Format } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { setupOf, useOutput, type DocumentWanted, type OutputChoices, type Wanted } from "./choices";
import { correctionOn, usePrinters, type Printer } from "./printers";

export interface DocumentShown {
  readonly kind: DocumentWanted;
  readonly outcome: DocumentOutcome;
  /** The name of the paper of the first pages, null when there are none. */
  readonly paper: string | null;
  readonly correction: Printer | null;
}

/** The pages that the choices ask for, after the fields have been drawn; null for what is no document. */
export function useDocument(): DocumentShown | null {
  const development = useDeferredValue(useApp(selectDevelopment));
  const choices = useDeferredValue(useOutput());
  const format = useFormat();
  const printers = usePrinters((state) => state.all);
  return useMemo(() => {
    const kind = documentKind(choices.what);
    return kind && shownOf(development, kind, choices, format, printers);
  }, [development, choices, format, printers]);
}

/** The document of this kind, null for a file that is none. */
export function documentKind(what: Wanted): DocumentWanted | null {
  return what === "template" || what === "board" || what === "parts" || what === "all" ? what : null;
}

/** What every document of the job says. */
export function documentOptions(development: Development, choices: OutputChoices, format: Format): DocumentOptions {
  const sentences = sentencesOf(development.job, ({ value, quantity }) => `${format.field(value, quantity)}${quantity === "angle" ? "°" : ""}`, format.trade);
  const date = new Date().toLocaleDateString();
  return { figures: format, words: sheetWords(format.trade), sentences, date, ...(choices.scale === null ? {} : { scale: choices.scale }) };
}

function shownOf(development: Development, kind: DocumentWanted, choices: OutputChoices, format: Format, printers: readonly Printer[]): DocumentShown {
  const options = documentOptions(development, choices, format);
  const setup: PageSetup = setupOf(choices);
  const plain = documentPages(development, kind, setup, options);
  const paper = plain.ok ? (plain.sections[0]?.paper ?? null) : null;
  const correction = paper === null || choices.printer === null ? null : correctionOn(printers, choices.printer, paper);
  // Laid out again only where a printer is corrected: its paper is known from the first layout.
  return { kind, outcome: correction ? documentPages(development, kind, { ...setup, correction }, options) : plain, paper, correction };
}
