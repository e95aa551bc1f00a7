// The station table as a CSV file (RFC 4180), ready for a spreadsheet.

import { type Piece, type Station, degrees } from "../../core/index";
import { CSV_ENGLISH, type CsvWords } from "./csvWords";

export interface CsvOptions {
  readonly separator: "," | ";";
  readonly decimal: "." | ",";
  /** Decimal places; every value is rounded by itself from the datum. */
  readonly places: number;
  readonly words?: CsvWords;
}

/**
 * One row a station: number, direction in degrees, girth position, bottom and top ordinate, kept length, then from and to of each
 * opening it meets; mm. Where an edge runs along the element both values are shown, before and after, with " / " between. Empty
 * where nothing is kept.
 * @throws RangeError when separator and decimal sign are both a comma, or for places outside 0 to 9.
 */
export function stationCsv(piece: Piece, options: CsvOptions): string {
  const { separator, decimal, places, words = CSV_ENGLISH } = options;
  if (separator === decimal) throw new RangeError("the decimal sign cannot be the separator");
  if (!(Number.isInteger(places) && places >= 0 && places <= 9)) throw new RangeError(`invalid places: ${places}; not in 0 to 9`);
  const number = (value: number) => rounded(value, places).replace(".", decimal);
  const gaps = Math.max(0, ...piece.stations.map(({ openings }) => openings.length));
  const headings = [words.station, words.direction, words.girth, words.bottom, words.top, words.length,
    ...Array.from({ length: gaps }, (_, i) => [`${words.openingFrom} ${i + 1}`, `${words.openingTo} ${i + 1}`]).flat()];
  const rows = piece.stations.map((station) => rowOf(station, gaps, number));
  return [headings, ...rows].map((row) => row.map((value) => field(value, separator)).join(separator)).join("\r\n") + "\r\n";
}

function rowOf(station: Station, gaps: number, number: (value: number) => string): string[] {
  const { label, theta, girth, before, after, length, openings } = station;
  const both = (a: number | undefined, b: number | undefined): string => {
    const shown = [a, b].map((value) => (value === undefined ? "" : number(value)));
    return shown[0] === shown[1] ? (shown[0] ?? "") : shown.join(" / ");
  };
  const limits = Array.from({ length: gaps }, (_, i) => openings[i]).flatMap((gap) => (gap ? [number(gap.from), number(gap.to)] : ["", ""]));
  return [label, number(degrees(theta)), number(girth), both(before[0]?.from, after[0]?.from), both(before.at(-1)?.to, after.at(-1)?.to), number(length), ...limits];
}

function rounded(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? (0).toFixed(places) : text;
}

/** Quoted where the format asks for it; text that a spreadsheet would take for a formula is made plain text with an apostrophe. */
function field(value: string, separator: string): string {
  const isNumber = /^-?\d+([.,]\d+)?$/.test(value);
  const safe = !isNumber && /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return safe.includes(separator) || /["\r\n]/.test(safe) ? `"${safe.replaceAll("\"", "\"\"")}"` : safe;
}
