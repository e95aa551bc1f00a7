// Numbers and words as the fields of a CSV file (RFC 4180).

export interface CsvFormat {
  readonly separator: "," | ";";
  readonly decimal: "." | ",";
  /** Decimal places; every value is rounded by itself from the datum. */
  readonly places: number;
}

/** @throws RangeError when separator and decimal sign are both a comma, or for places outside 0 to 9. */
export function checkCsvFormat({ separator, decimal, places }: CsvFormat): void {
  if (separator === decimal) throw new RangeError("the decimal sign cannot be the separator");
  if (!(Number.isInteger(places) && places >= 0 && places <= 9)) throw new RangeError(`invalid places: ${places}; not in 0 to 9`);
}

/** A value to so many places, never -0. */
export function csvNumber(value: number, { decimal, places }: Pick<CsvFormat, "decimal" | "places">): string {
  const text = value.toFixed(places);
  return (Number(text) === 0 ? (0).toFixed(places) : text).replace(".", decimal);
}

/** Rows of fields as the text of a file, every line ended. */
export function csvText(rows: readonly (readonly string[])[], separator: CsvFormat["separator"]): string {
  return rows.map((row) => row.map((value) => field(value, separator)).join(separator)).join("\r\n") + "\r\n";
}

/** Quoted where the format asks for it; text that a spreadsheet would take for a formula is made plain text with an apostrophe. */
function field(value: string, separator: string): string {
  const isNumber = /^-?\d+([.,]\d+)?$/.test(value);
  const safe = !isNumber && /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return safe.includes(separator) || /["\r\n]/.test(safe) ? `"${safe.replaceAll("\"", "\"\"")}"` : safe;
}
