// The answers of a class as a CSV file: a row a student, with who it is, which piece, and every length a right drawing shows.

import type { Piece, Station } from "../../core/index";
import { type CsvFormat, checkCsvFormat, csvNumber, csvText } from "./csvText";

export interface AnswerRow {
  readonly name: string;
  readonly group: string;
  readonly code: string;
  /** What differs from student to student, as shown; the same headings in every row. */
  readonly differs: readonly { readonly heading: string; readonly figure: string }[];
  readonly piece: Piece;
}

export interface AnswerWords {
  readonly number: string;
  readonly name: string;
  readonly group: string;
  readonly code: string;
  readonly girth: string;
  readonly spacing: string;
  /** The ordinate at a station where every foot stands on the base line; both ends where one does not; `nth` from 1: the openings along the element. */
  readonly top: (label: string) => string;
  readonly end: (label: string, end: "bottom" | "top") => string;
  readonly opening: (label: string, nth: number, end: "from" | "to") => string;
}

/** mm: a foot nearer to the base line stands on it. */
const ON_BASE = 1e-6;

/**
 * Number, name, class, code, what differs, stretch-out, one space, then the ordinates by station, all in mm; empty where
 * nothing is kept, or where a piece has no such station. It begins with a byte order mark, by which spreadsheets know letters beyond English.
 * @throws RangeError as `checkCsvFormat` does.
 */
export function answersCsv(rows: readonly AnswerRow[], { words, ...format }: CsvFormat & { readonly words: AnswerWords }): string {
  checkCsvFormat(format);
  const number = (value: number) => csvNumber(value, format);
  const level = rows.every(({ piece }) => standsOnBase(piece.stations));
  const answers = rows.map(({ piece }) => new Map(piece.stations.flatMap((station) => answersAt(station, level, words, number))));
  const places = [...new Set(answers.flatMap((one) => [...one.keys()]))];
  const differs = rows[0]?.differs.map(({ heading }) => heading) ?? [];
  const headings = [words.number, words.name, words.group, words.code, ...differs, words.girth, words.spacing, ...places];
  const body = rows.map(({ name, group, code, differs: own, piece }, i) => {
    const { girth } = piece.pattern;
    const spaces = piece.stations.filter(({ mark }) => mark === "even").length;
    return [String(i + 1), name, group, code, ...own.map(({ figure }) => figure), number(girth), number(girth / spaces), ...places.map((place) => answers[i]?.get(place) ?? "")];
  });
  return `\ufeff${csvText([headings, ...body], format.separator)}`;
}

function answersAt({ label, mark, bottom, top, openings }: Station, level: boolean, words: AnswerWords, number: (value: number) => string): [string, string][] {
  // The last station is the first again.
  if (mark === "closing") return [];
  const shown = (value: number | null) => (value === null ? "" : number(value));
  const ends: [string, string][] = level ? [[words.top(label), shown(top)]] : [[words.end(label, "bottom"), shown(bottom)], [words.end(label, "top"), shown(top)]];
  return [...ends, ...openings.flatMap(({ from, to }, i): [string, string][] => [[words.opening(label, i + 1, "from"), number(from)], [words.opening(label, i + 1, "to"), number(to)]])];
}

function standsOnBase(stations: readonly Station[]): boolean {
  return stations.every(({ bottom }) => bottom !== null && Math.abs(bottom) <= ON_BASE);
}
