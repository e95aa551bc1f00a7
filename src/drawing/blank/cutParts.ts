// The parts of a job as a cutter wants them: every piece and plate at full size with its caption, and all of them in a row.

import type { Blank, Fabrication } from "../../core/index";
import { boundsOf } from "../bounds";
import type { Item, TextItem } from "../display";
import { type Figures, METRIC } from "../figures";
import { LETTERING } from "../lettering";
import { moveItem } from "../moveItem";
import { type BlankOptions, blankDrawing } from "./blankDrawing";
import { type BlankWords, ENGLISH_BLANK } from "./blankWords";
import { plateDrawing } from "./plateDrawing";

export interface CutPart {
  readonly name: string;
  readonly kind: "pipe" | "plate";
  /** Of the blank, mm. */
  readonly width: number;
  readonly height: number;
  /** mm, y up, in the part's own place. */
  readonly items: readonly Item[];
}

/** Between parts, mm. */
const APART = 20;

/** Pieces before plates, each once whatever its number off. */
export function cutParts({ pieces, plates }: Fabrication, options: BlankOptions = {}): CutPart[] {
  const part = (one: { name: string; quantity: number; blank: Blank }, kind: CutPart["kind"], items: readonly Item[]): CutPart => {
    const { name, blank: { width, height } } = one;
    return { name, kind, width, height, items: [...items, caption(one, items, options)] };
  };
  return [...pieces.map((piece) => part(piece, "pipe", blankDrawing(piece, options))), ...plates.map((plate) => part(plate, "plate", plateDrawing(plate, options)))];
}

/** All parts from left to right on one line, the lower left corner of the first at (0, 0). */
export function inOneRow(parts: readonly CutPart[]): Item[] {
  let x = 0;
  return parts.flatMap(({ items }) => {
    const { left, right, bottom } = boundsOf(items);
    const moved = items.map((item) => moveItem(item, { x: x - left, y: -bottom }));
    x += right - left + APART;
    return moved;
  });
}

/** Under the part: its name, number off, material and thickness. */
function caption(
  { name, quantity, blank }: { name: string; quantity: number; blank: Blank }, items: readonly Item[],
  { figures = METRIC, words = ENGLISH_BLANK, lettering = LETTERING }: BlankOptions,
): TextItem {
  const { left, bottom } = boundsOf(items);
  return {
    kind: "text", pen: "lettering", text: [name, `${quantity} ${words.off}`, ...stock(blank, figures, words)].join(", "),
    height: lettering, align: "start", turn: 0, at: { x: left, y: bottom - 2.5 * lettering },
  };
}

function stock({ material, thickness }: Blank, figures: Figures, words: BlankWords): string[] {
  return thickness > 0 ? [`${words.material[material]} ${figures.length(thickness)}`] : [];
}
