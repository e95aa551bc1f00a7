import { placeKey, type ReadRow } from "../check/places";
import type { Check } from "../check/useCheck";
import { checkWords } from "../words/check";

/** What a row of readings is called. */
export function stationName({ label, at }: ReadRow): string {
  return checkWords.station(label, label === "0" && at > 0);
}

/** The row whose field has this key, and its index among those of its line; null for what is no ordinate. */
export function rowOfKey({ places }: Pick<Check, "places">, key: string): { readonly row: ReadRow; readonly index: number } | null {
  for (const { lines, rows } of places.blocks) {
    const index = rows.findIndex(({ at }) => lines.some((line) => placeKey({ line, at }) === key));
    const row = rows[index];
    if (row) return { row, index };
  }
  return null;
}
