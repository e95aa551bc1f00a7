// What the reader chooses about the paper.

import type { PaperFamily, PaperName } from "./papers";

/** The length of a roll follows from what is printed. "smallest": of the family, that which takes each piece whole; else tiles of the smallest. */
export type PaperChoice =
  | { readonly kind: "named"; readonly name: PaperName }
  | { readonly kind: "own"; readonly width: number; readonly height: number }
  | { readonly kind: "roll"; readonly width: number }
  | { readonly kind: "smallest"; readonly family: PaperFamily };

/**
 * What the drawing is multiplied by so that this printer prints it true: across the paper's width and along its height, the paper
 * upright; 1 is none. A page that lies takes them the other way about, since it is printed turned.
 */
export interface PrinterCorrection {
  /** The name it is kept by, with the paper's. */
  readonly printer: string;
  readonly across: number;
  readonly along: number;
}

/** Lengths in mm. */
export interface PageSetup {
  readonly paper: PaperChoice;
  readonly orientation: "best" | "portrait" | "landscape";
  /** Kept white at every edge of the paper. */
  readonly margin: number;
  /** Shared by neighbouring tiles. */
  readonly overlap: number;
  readonly correction: PrinterCorrection | null;
}

/** Printers leave 4 to 7 mm at the edges; 10 mm of overlap takes a trim line and its marks. */
export const DEFAULT_SETUP: PageSetup = {
  paper: { kind: "named", name: "A4" }, orientation: "best", margin: 10, overlap: 10, correction: null,
};

/** A size of one's own, and the length of a roll, mm: from the narrow side of A5 up. Beyond 14 400 points readers of PDF need not follow (PDF 32000-1:2008, annex C). */
export const OWN_SIZE = { min: 148, max: 5000 } as const;

/** Of white margin and of overlap, mm. */
export const MARGIN_SIZE = { min: 0, max: 50 } as const;

/** How far a correction may go from 1. */
export const MOST_CORRECTION = 0.05;
