import type { Reading } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { checkWords } from "../words/check";
import type { ReadPlaces } from "./places";

/** A reading by name, as in a sentence: "station 4, foot". */
export function placeName({ places }: { readonly places: ReadPlaces }, reading: Reading, trade: TradeWords): string {
  const rows = places.blocks[0]?.rows ?? [];
  return checkWords.nameOf(reading, (at) => rows.find((row) => row.at === at)?.label ?? String(at), trade);
}
