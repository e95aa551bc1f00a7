// A class list as pasted or as a CSV file: rows of cells, whatever stands between them (comma, semicolon, tab), quoted or not (RFC 4180).

export type TableFault =
  | { readonly kind: "empty" }
  | { readonly kind: "not-text" }
  | { readonly kind: "too-large"; readonly most: number }
  | { readonly kind: "too-many"; readonly found: number; readonly most: number }
  | { readonly kind: "quote"; readonly line: number }
  | { readonly kind: "too-long"; readonly line: number; readonly most: number };

export type ReadTable = { readonly ok: true; readonly rows: readonly (readonly string[])[] } | { readonly ok: false; readonly fault: TableFault };

/** Rows, letters of a cell, columns, and characters of the whole. */
export const MOST_ROWS = 2000;
const MOST_LETTERS = 120, MOST_COLUMNS = 40, MOST_TEXT = 1_000_000;

/** A sign that no list has: every line is one cell. */
const NO_SEPARATOR = "\u001e";

/** Signs that are not seen, or turn the order of those after them. */
const UNSEEN = /[\u0000-\u001f\u007f-\u009f\u00ad\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufffe\uffff]/g;

/** The cells of a text, tidied, so many columns at most and so many letters a cell; rows without any are left out. What separates them is guessed unless given; a sign in fewer than half of the lines separates nothing ("Müller, Zoë" among plain names). */
export async function readTable(text: string, { columns = MOST_COLUMNS, letters = MOST_LETTERS, separator = "" } = {}): Promise<ReadTable> {
  if (text.length > MOST_TEXT) return refusal({ kind: "too-large", most: MOST_TEXT });
  if (text.includes("\u0000")) return refusal({ kind: "not-text" });
  const { default: papa } = await import("papaparse");
  const { data, errors } = papa.parse<string[]>(text.replace(/^\ufeff/, ""), { delimiter: separator, delimitersToGuess: [",", ";", "\t", "|"] });
  const quote = errors.find(({ type }) => type === "Quotes");
  if (quote) return refusal({ kind: "quote", line: (quote.row ?? 0) + 1 });
  const rows = data.map((cells) => cells.slice(0, columns).map(tidy));
  const long = rows.findIndex((cells) => cells.some((cell) => cell.length > letters));
  if (long >= 0) return refusal({ kind: "too-long", line: long + 1, most: letters });
  const filled = rows.filter((cells) => cells.some((cell) => cell !== ""));
  if (filled.length === 0) return refusal({ kind: "empty" });
  if (filled.length > MOST_ROWS) return refusal({ kind: "too-many", found: filled.length, most: MOST_ROWS });
  const apart = filled.filter((cells) => cells.length > 1).length;
  if (separator === "" && apart > 0 && apart * 2 < filled.length) return readTable(text, { columns, letters, separator: NO_SEPARATOR });
  return { ok: true, rows: filled };
}

function tidy(cell: string): string {
  return cell.replace(/\s+/g, " ").replace(UNSEEN, "").replace(/\p{Surrogate}/gu, "").normalize("NFC").trim();
}

function refusal(fault: TableFault): ReadTable {
  return { ok: false, fault };
}
