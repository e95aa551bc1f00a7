import type { MarkingItem } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { markingWords } from "../words/marking";

// Schemes to start from. The division of the fifteen marks, and what is taken off for the seam, a length and a hidden edge, follow
// published keys; the readings alone are common practice.

export const readySchemes = ["readings", "fifteen", "takenOff"] as const;
export type ReadyScheme = (typeof readySchemes)[number];

type Row = readonly [id: string, marks: number, by: MarkingItem["by"]];

const rows: Readonly<Record<ReadyScheme, readonly Row[]>> = {
  readings: [["girth", 2, "girth"], ["ordinates", 6, "ordinates"], ["angles", 2, "angles"]],
  fifteen: [["views", 3, "eye"], ["plane", 1, "angles"], ["points", 1, "eye"], ["plain", 3, "girth"], ["carried", 2, "ordinates"], ["finished", 4, "eye"], ["neatness", 1, "eye"]],
  takenOff: [["whole", 20, "eye"], ["seam", -5, "seam"], ["lengths", -3, "ordinates"], ["hidden", -2, "eye"]],
};

/** The items of a ready scheme, in the words of the trade. */
export function readyItems(name: ReadyScheme, trade: TradeWords): MarkingItem[] {
  const texts: Readonly<Record<string, string>> = markingWords.items(trade);
  return rows[name].map(([id, marks, by]) => ({ id, text: texts[id] ?? "", marks, by }));
}
