// The part list as a CSV file.

import type { PartRow } from "../../core/index";
import { ENGLISH_MATERIAL, type MaterialWords } from "../../drawing/materialWords";
import { type CsvFormat, checkCsvFormat, csvNumber, csvText } from "./csvText";

export interface PartListWords {
  /** One heading a column, in their order. */
  readonly headings: readonly [
    name: string, kind: string, quantity: string, material: string, thickness: string, width: string, height: string, area: string, cutLength: string, mass: string, totalMass: string,
  ];
  readonly kind: Readonly<Record<PartRow["kind"], string>>;
  readonly material: MaterialWords;
}

export const PART_LIST_ENGLISH: PartListWords = {
  headings: ["part", "kind", "number off", "material", "thickness mm", "sheet width mm", "sheet height mm", "blank area mm²", "cut length mm", "mass each kg", "mass in all kg"],
  kind: { pipe: "pipe", plate: "end plate" },
  material: ENGLISH_MATERIAL,
};

/** Masses have so many places more than lengths. */
const FINER = 2;

/** One row a part: names and counts, lengths in mm, areas in mm², masses in kg; no thickness and no mass where none is known. @throws RangeError as `checkCsvFormat` does. */
export function partListCsv(parts: readonly PartRow[], { words = PART_LIST_ENGLISH, ...format }: CsvFormat & { readonly words?: PartListWords }): string {
  checkCsvFormat(format);
  const number = (value: number) => csvNumber(value, format);
  const known = (value: number, write: (value: number) => string) => (value > 0 ? write(value) : "");
  const kilograms = (value: number) => csvNumber(value, { ...format, places: Math.min(9, format.places + FINER) });
  const rows = parts.map(({ name, kind, quantity, material, thickness, width, height, blankArea, cutLength, mass, totalMass }) => [
    name, words.kind[kind], String(quantity), words.material[material], known(thickness, number), number(width), number(height), number(blankArea), number(cutLength),
    known(mass, kilograms), known(totalMass, kilograms),
  ]);
  return csvText([words.headings, ...rows], format.separator);
}
