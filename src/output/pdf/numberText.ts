// Numbers as PDF text.

/** To four places, no zeros at the end, no -0. @throws RangeError for what is not a finite number. */
export function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`invalid number for a page: ${value}`);
  const text = value.toFixed(4).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
