// The words of a printed template. The caller may pass its own.

import type { NamedSeam, PipePart } from "../core/index";
import { TRADE, type TradeWords } from "./tradeWords";
import { type DrawingWords, drawingWords } from "./words";

export interface SheetWords extends DrawingWords {
  readonly untitled: string;
  readonly piece: string;
  readonly of: string;
  readonly basis: Readonly<Record<PipePart["basis"], string>>;
  readonly thickness: string;
  readonly stations: string;
  readonly seamAt: Readonly<Record<NamedSeam, string>>;
  readonly seamAtAngle: string;
  readonly scale: string;
  readonly net: string;
  readonly checkRuler: string;
  readonly cautions: readonly string[];
  readonly sheet: string;
  /** On the cover: what it shows, and how the sheets go together. */
  readonly map: string;
  readonly joining: string;
}

/** The words of a printed template in the words of the trade. */
export function sheetWords(trade: TradeWords): SheetWords {
  return {
    ...drawingWords(trade),
    untitled: "untitled",
    piece: "piece",
    of: "of",
    basis: { outside: "outside", inside: "inside", mean: "mean" },
    thickness: "thickness",
    stations: "stations",
    seamAt: {
      shortest: `seam at the shortest ${trade.element}`, longest: `seam at the longest ${trade.element}`,
      front: "seam at the front", right: "seam on the right", back: "seam at the back", left: "seam on the left",
    },
    seamAtAngle: "seam at",
    scale: "scale 1:1",
    net: "net, no allowances",
    checkRuler: "Check the 100 mm ruler before cutting.",
    cautions: [
      "Sharp edges: wear gloves and eye protection. Prove it in card or scrap first.",
      "Pressure, flue, gas and lifting parts follow the governing code and licensed practice.",
    ],
    sheet: "sheet",
    map: "Map of the sheets, not to scale.",
    joining: "Cut each sheet at its dashed lines on the left and above, lay the marks on those of its neighbour.",
  };
}

export const ENGLISH_SHEET: SheetWords = sheetWords(TRADE["stretch-out"]);
