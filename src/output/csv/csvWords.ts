// Headings of the station table. The caller may pass its own.

import { TRADE, type TradeWords } from "../../drawing/tradeWords";

export interface CsvWords {
  readonly station: string;
  readonly direction: string;
  readonly girth: string;
  readonly bottom: string;
  readonly top: string;
  readonly length: string;
  /** Followed by a number. */
  readonly openingFrom: string;
  readonly openingTo: string;
}

/** The headings in the words of the trade. */
export function csvWords({ girth }: Pick<TradeWords, "girth">): CsvWords {
  return {
    station: "station", direction: "direction °", girth: `${girth} mm`, bottom: "bottom mm", top: "top mm", length: "length mm",
    openingFrom: "opening from", openingTo: "opening to",
  };
}

export const CSV_ENGLISH: CsvWords = csvWords(TRADE["stretch-out"]);
