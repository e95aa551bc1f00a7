// A part of a document: the pages of one piece, of the board drawing, of a list.

import type { Page } from "./page";
import type { PaperField } from "./paperField";

export interface Section {
  readonly kind: "template" | "board" | "parts" | "calibration";
  /** The piece, or what the document is. */
  readonly title: string;
  readonly layout: "one" | "tiles";
  /** "A4", or its size. */
  readonly paper: string;
  readonly landscape: boolean;
  /** Of the tiles; 1 and 1 for single pages. */
  readonly columns: number;
  readonly rows: number;
  /** Paper mm a real mm. */
  readonly scale: number;
  readonly pages: readonly Page[];
}

/** Paper chosen and how it is called. */
export interface NamedPaper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** A page of this field. */
export function pageOn({ width, height, stretch }: PaperField, name: string, items: Page["items"]): Page {
  return { name, width, height, items, stretch };
}
