// What is used of pdfkit 0.20.2, its insides included: viewer preferences and layers have no public door.

declare module "pdfkit" {
  export interface PdfReference {
    readonly data: Record<string, unknown>;
    end(): void;
  }

  export interface PdfFont {
    readonly id: string;
    /** Glyph numbers of the subset as four hexadecimal digits, and their places; advances in thousandths of the type size. */
    encode(text: string): [readonly string[], readonly { readonly advanceWidth: number }[]];
    ref(): PdfReference;
    readonly font: { hasGlyphForCodePoint(code: number): boolean };
  }

  export interface PdfPage {
    readonly fonts: Record<string, PdfReference>;
    readonly resources: PdfReference;
  }

  export interface PdfOptions {
    readonly autoFirstPage: false;
    readonly pdfVersion: "1.7";
    readonly font: Uint8Array;
    readonly displayTitle: true;
    readonly lang: string;
    readonly margin: 0;
    readonly info: Readonly<Record<string, string | Date>>;
  }

  export class PDFDocument {
    constructor(options: PdfOptions);
    readonly _root: { readonly data: Record<string, unknown> & { readonly ViewerPreferences: PdfReference } };
    readonly _font: PdfFont;
    readonly page: PdfPage;
    on(event: "data", take: (chunk: Uint8Array) => void): void;
    on(event: "end", take: () => void): void;
    on(event: "error", take: (error: Error) => void): void;
    /** Width and height in points. */
    addPage(options: { readonly size: readonly [number, number]; readonly margin: 0 }): void;
    addContent(operators: string): void;
    ref(data: Record<string, unknown>): PdfReference;
    end(): void;
  }
}
