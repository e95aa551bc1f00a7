import { readFileSync } from "node:fs";
import { PDFDocument } from "pdfkit";
import { documentPages } from "../../src/drawing/sheets/documentPages";
import type { Page } from "../../src/drawing/sheets/page";
import { DEFAULT_SETUP } from "../../src/drawing/sheets/setup";
import { pdfDocument } from "../../src/output/pdf/pdfDocument";
import { pdfPages } from "../browser/pdfPages";
import { pipeJob, planeCut } from "../support/pipeJob";
import { cutCases, developed } from "./developing";

/** One template to be laid out and written. */
export interface PrintingCase {
  readonly name: string;
  readonly data: unknown;
}

/** A pattern two metres long and more than one high, and one with sixteen cuts. */
export const printingCases: readonly PrintingCase[] = [
  { name: "2 m on A4", data: pipeJob({ diameter: 2000 / Math.PI, length: 1250, stations: 24, cuts: [planeCut({ angle: 15, height: 1150 })] }) },
  { name: "16 cuts on A4", data: cutCases.at(-1)?.data },
];

const lettering = new Uint8Array(readFileSync("src/app/print/lettering.otf"));

/** The pages of a template on A4. */
export function laidOut(data: unknown): readonly Page[] {
  const outcome = documentPages(developed(data), "template", DEFAULT_SETUP);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.pages;
}

/** The bytes of the file. */
export async function written(pages: readonly Page[]): Promise<Uint8Array> {
  const bytes = await pdfDocument(pages, { title: "bench", lettering });
  if (!bytes) throw new Error("no file");
  return bytes;
}

/** How many paths the file paints. */
export function pathsIn(bytes: Uint8Array): number {
  return pdfPages(bytes).reduce((sum, { paths }) => sum + paths.length, 0);
}

/** As many pages with as many straight lines in all, written by the same library: what the file costs without a drawing. */
export function plainLines(pages: number, lines: number): Promise<number> {
  const file = new PDFDocument({ autoFirstPage: false, pdfVersion: "1.7", font: lettering, displayTitle: true, lang: "en", margin: 0, info: {} });
  let size = 0;
  const end = new Promise<number>((resolve, reject) => {
    file.on("data", ({ length }) => (size += length));
    file.on("error", reject);
    file.on("end", () => resolve(size));
  });
  for (let page = 0; page < pages; page++) {
    file.addPage({ size: [595.28, 841.89], margin: 0 });
    for (let line = 0; line < lines / pages; line++) file.addContent(`${(line * 7.31) % 595} 20 m ${(line * 3.17) % 595} 800 l S`);
  }
  file.end();
  return end;
}
