// The few words a drawing carries. The caller may pass its own.

import { TRADE, type TradeWords } from "./tradeWords";

export interface DrawingWords {
  readonly stretchOut: string;
  readonly insideUp: string;
  readonly outsideUp: string;
  readonly seam: string;
  /** After the diameter of a pipe with a wall: whose it is. */
  readonly surface: Readonly<Record<"mean" | "outside" | "inside", string>>;
}

/** The words of a drawing in the words of the trade. */
export function drawingWords({ girth }: Pick<TradeWords, "girth">): DrawingWords {
  return { stretchOut: girth, insideUp: "inside up", outsideUp: "outside up", seam: "seam", surface: { mean: "mean", outside: "outside", inside: "inside" } };
}

export const ENGLISH: DrawingWords = drawingWords(TRADE["stretch-out"]);
