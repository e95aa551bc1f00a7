import type { Page } from "../../drawing/sheets/page";
import letteringFile from "./lettering.otf?url";

export interface PdfWish {
  readonly title: string;
  readonly onPage: (written: number) => void;
  readonly signal: AbortSignal;
}

/** The pages, which may be drawn one after the other while the file is made, as a PDF file, null when `signal` put an end to it; what makes PDF is fetched with the first. Rejects when that cannot be. */
export async function makePdf(pages: Iterable<Page> | AsyncIterable<Page>, { title, onPage, signal }: PdfWish): Promise<Blob | null> {
  const [{ pdfDocument }, lettering] = await Promise.all([import("../../output/pdf/pdfDocument"), fetchLettering()]);
  const bytes = await pdfDocument(pages, { title, lettering, onPage, signal, pause, language: document.documentElement.lang });
  return bytes && new Blob([bytes as Uint8Array<ArrayBuffer>], { type: "application/pdf" });
}

async function fetchLettering(): Promise<Uint8Array> {
  const answer = await fetch(letteringFile);
  if (!answer.ok) throw new Error(`no lettering: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** Lets the page draw and take keys. */
function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
