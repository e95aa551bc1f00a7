// One group of a DXF file: its code and its value, a line each.

/** A code with a word, a whole number or, for codes of places and sizes, a number to eight places. */
export type Tag = readonly [code: number, value: string | number];

/** Tags as the lines of a file. @throws RangeError for what is not a finite number. */
export function tagLines(tags: readonly Tag[]): string {
  return tags.map(([code, value]) => `${code}\n${typeof value === "string" ? value : numberText(code, value)}\n`).join("");
}

/** Codes 10 to 59 and 140 to 149 hold real numbers, the others used here whole ones. */
function numberText(code: number, value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`invalid number for a DXF file: ${value}`);
  const isReal = (code >= 10 && code <= 59) || (code >= 140 && code <= 149);
  if (!isReal) return String(value);
  const text = value.toFixed(8).replace(/0+$/, "");
  const whole = text.endsWith(".") ? `${text}0` : text;
  return whole === "-0.0" ? "0.0" : whole;
}
