// Pages as a PDF file: vectors at true size, the lettering embedded, told not to be scaled when printed. pdfkit is fetched when
// the first file is asked for.

import type { PDFDocument, PdfReference } from "pdfkit";
import type { Page } from "../../drawing/sheets/page";
import { POINTS, pageOperators } from "./pageOperators";
import { LAYERS } from "./penInk";

export interface PdfChoices {
  readonly title: string;
  /** The face of the letters: the bytes of a TrueType or OpenType font. */
  readonly lettering: Uint8Array;
  /** When the file was made; now unless given. */
  readonly made?: Date;
  /** BCP 47; "en" unless given. */
  readonly language?: string;
  /** Told after each page how many are written. */
  readonly onPage?: (written: number) => void;
  /** Awaited between pages, so that a page in a browser stays alive. */
  readonly pause?: () => Promise<void>;
  /** Looked at between pages: a file that is no longer wanted is not finished. */
  readonly signal?: { readonly aborted: boolean };
}

/**
 * The bytes of the file; null when `signal` put an end to it. The MediaBox of each page is its paper, to 1e-6 point.
 * @throws RangeError for no pages at all.
 */
export async function pdfDocument(pages: Iterable<Page> | AsyncIterable<Page>, { title, lettering, made = new Date(), language = "en", onPage, pause, signal }: PdfChoices): Promise<Uint8Array | null> {
  const { PDFDocument } = await import("pdfkit");
  const info = { Title: title, Creator: "Flatwright", Producer: "Flatwright", CreationDate: made };
  const file = new PDFDocument({ autoFirstPage: false, pdfVersion: "1.7", font: lettering, displayTitle: true, lang: language, margin: 0, info });
  Object.assign(file._root.data.ViewerPreferences.data, { PrintScaling: "None", PickTrayByPDFSize: true });
  const whole = collected(file);
  const layers = layersOf(file);
  let written = 0;
  for await (const page of pages) {
    if (signal?.aborted) return null;
    file.addPage({ size: [POINTS * page.width, POINTS * page.height], margin: 0 });
    file.page.fonts[file._font.id] ??= file._font.ref();
    file.page.resources.data["Properties"] = layers;
    file.addContent(pageOperators(page, file._font));
    written++;
    onPage?.(written);
    await pause?.();
  }
  if (signal?.aborted) return null;
  if (written === 0) throw new RangeError("no pages");
  file.end();
  return whole;
}

/** The optional content groups of the file by the name a page calls them. */
function layersOf(file: PDFDocument): Record<string, PdfReference> {
  const layers = Object.fromEntries(Object.entries(LAYERS).map(([name, said]) => [name, file.ref({ Type: "OCG", Name: new String(said) })]));
  const all = Object.values(layers);
  file._root.data["OCProperties"] = { OCGs: all, D: { Order: all, ON: all } };
  for (const layer of all) layer.end();
  return layers;
}

function collected(file: PDFDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    file.on("data", (chunk) => chunks.push(chunk));
    file.on("error", reject);
    file.on("end", () => {
      const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
      let place = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, place);
        place += chunk.length;
      }
      resolve(bytes);
    });
  });
}
