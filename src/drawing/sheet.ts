// The pattern at true size on paper: on one sheet when one takes it, else on tiles with a cover map.

import type { Development, Piece } from "../core/index";
import { boundsOf } from "./bounds";
import type { Box } from "./box";
import type { Item } from "./display";
import { type Figures, METRIC } from "./figures";
import { LETTERING } from "./lettering";
import { metricsFor } from "./metrics";
import { moveItem } from "./moveItem";
import { pageFrame } from "./pageFrame";
import { PAPERS, type Paper, type PaperFamily, type PaperName, paperNamed } from "./papers";
import { patternBlock } from "./patternBlock";
import { sheetTitle } from "./sheetTitle";
import { ENGLISH_SHEET, type SheetWords } from "./sheetWords";
import { tilePages } from "./tilePages";

export interface SheetOptions {
  readonly family: PaperFamily;
  /** Only this paper: one sheet of it, or tiles. Without it the smallest of the family that takes the pattern, or tiles of the smallest. */
  readonly paper?: PaperName;
  readonly figures?: Figures;
  readonly words?: SheetWords;
  /** Which piece of the development; the first unless given. */
  readonly piece?: number;
}

/** One page, paper mm, origin at the bottom left corner of the paper. */
export interface Page {
  /** "A1" is row A, column 1 of the tiles; "cover" their map; "1" a single sheet. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

export interface SheetSet {
  readonly kind: "one" | "tiles";
  readonly paper: PaperName;
  readonly landscape: boolean;
  readonly pages: readonly Page[];
}

/** What goes on every page, worked out once. */
export interface Template {
  readonly art: readonly Item[];
  readonly bounds: Box;
  readonly piece: Piece;
  readonly sentences: readonly string[];
  readonly inches: boolean;
  readonly words: SheetWords;
}

/** The pages of a template. @throws RangeError for a piece or paper that does not exist. */
export function sheets(development: Development, options: SheetOptions): SheetSet {
  const template = templateOf(development, options);
  const papers = options.paper ? [paperNamed(options.paper)] : PAPERS.filter(({ family }) => family === options.family);
  for (const paper of papers) {
    for (const landscape of [false, true]) {
      const page = onePage(template, paper, landscape, "below") ?? onePage(template, paper, landscape, "right");
      if (page) return { kind: "one", paper: paper.name, landscape, pages: [page] };
    }
  }
  const [smallest] = papers;
  if (!smallest) throw new RangeError(`no paper in the family ${options.family}`);
  const upright = tilePages(template, smallest.width, smallest.height);
  const lying = tilePages(template, smallest.height, smallest.width);
  const landscape = lying.length < upright.length;
  return { kind: "tiles", paper: smallest.name, landscape, pages: landscape ? lying : upright };
}

function templateOf(development: Development, options: SheetOptions): Template {
  const { figures = METRIC, words = ENGLISH_SHEET, piece: index = 0 } = options;
  const piece = development.pieces[index];
  if (!piece) throw new RangeError(`no piece ${index} among ${development.pieces.length}`);
  const { job } = development;
  const art = patternBlock(piece, job.development.face, { origin: { x: 0, y: 0 }, scale: 1, turn: 0 }, metricsFor(LETTERING), figures, words);
  return { art, bounds: boundsOf(art), piece, sentences: sheetTitle(development, piece, figures, words), inches: job.units === "inch", words };
}

/** The page with the pattern in the middle of its room, or null when there is no room for it. */
function onePage({ art, bounds, sentences, inches }: Template, paper: Paper, landscape: boolean, place: "below" | "right"): Page | null {
  const [width, height] = landscape ? [paper.height, paper.width] : [paper.width, paper.height];
  const { items, room } = pageFrame(width, height, sentences, inches, place);
  if (bounds.right - bounds.left > room.right - room.left || bounds.top - bounds.bottom > room.top - room.bottom) return null;
  const middle = { x: (room.left + room.right - bounds.left - bounds.right) / 2, y: (room.bottom + room.top - bounds.bottom - bounds.top) / 2 };
  return { name: "1", width, height, items: [...items, ...art.map((item) => moveItem(item, middle))] };
}
