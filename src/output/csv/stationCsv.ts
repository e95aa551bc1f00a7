// The station table as a CSV file (RFC 4180), ready for a spreadsheet.

import { type Piece, type Station, degrees } from "../../core/index";
import { type CsvFormat, checkCsvFormat, csvNumber, csvText } from "./csvText";
import { CSV_ENGLISH, type CsvWords } from "./csvWords";

export interface CsvOptions extends CsvFormat {
  readonly words?: CsvWords;
}

/**
 * One row a station: number, direction in degrees, girth position, bottom and top ordinate, kept length, then from and to of each
 * opening it meets; mm. Where an edge runs along the element both values are shown, before and after, with " / " between. Empty
 * where nothing is kept.
 * @throws RangeError when separator and decimal sign are both a comma, or for places outside 0 to 9.
 */
export function stationCsv(piece: Piece, options: CsvOptions): string {
  const { separator, words = CSV_ENGLISH } = options;
  checkCsvFormat(options);
  const number = (value: number) => csvNumber(value, options);
  const gaps = Math.max(0, ...piece.stations.map(({ openings }) => openings.length));
  const headings = [words.station, words.direction, words.girth, words.bottom, words.top, words.length,
    ...Array.from({ length: gaps }, (_, i) => [`${words.openingFrom} ${i + 1}`, `${words.openingTo} ${i + 1}`]).flat()];
  const rows = piece.stations.map((station) => rowOf(station, gaps, number));
  return csvText([headings, ...rows], separator);
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
