// One page of paper, ready for any output.

import type { Item } from "../display";

/** True mm on the paper, origin at its bottom left corner, y up. */
export interface Page {
  /** "A1" is row A, column 1 of the tiles; "cover" their map; else the number of the page in its section. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** What the items are multiplied by about the middle of the paper, so that a printer that is off prints them true. */
  readonly stretch: { readonly x: number; readonly y: number };
}

/** No printer's error is made up for. */
export const AS_DRAWN: Page["stretch"] = { x: 1, y: 1 };
