import type { Units } from "./job";
import { plainUnitSize, type QuantityKind } from "./quantityUnits";

// A length, angle or number as a maker reads it, without its unit.

export interface QuantityFormat {
  units: Units;
  kind: QuantityKind;
  /** Fractions are for lengths in inches; anything else is shown decimal. Default "decimal". */
  style?: "decimal" | "fraction";
  /** Of the finest fraction, a whole number from 1 to 1024. Default 16. */
  denominator?: number;
  /** At most so many decimal places, 0 to 15; zeros at the end are left out. Default 3, inches 4. */
  places?: number;
  /** Default ".". */
  decimalMark?: "." | ",";
}

/**
 * The text for `value` (mm, degrees or a plain number), rounded half away from zero to the places or denominator
 * asked for: "114.3", "4 1/2". A negative value has a minus sign "−"; what rounds to nothing is "0".
 * `parseQuantity` with the same units and kind reads it back. RangeError for a value that is not finite or from 1e21.
 */
export function formatQuantity(value: number, format: QuantityFormat): string {
  if (!(Math.abs(value) < 1e21)) throw new RangeError(`invalid value: ${value}; not in (-1e21, 1e21)`);
  const inches = format.kind === "length" && format.units === "inch";
  const size = Math.abs(value) / plainUnitSize(format.kind, format.units);
  const text =
    inches && format.style === "fraction"
      ? fraction(size, format.denominator ?? 16)
      : decimal(size, format.places ?? (inches ? 4 : 3), format.decimalMark ?? ".");
  return value < 0 && text !== "0" ? `−${text}` : text;
}

function decimal(size: number, places: number, mark: string): string {
  if (!(Number.isInteger(places) && places >= 0 && places <= 15)) {
    throw new RangeError(`invalid places: ${places}; not a whole number in [0, 15]`);
  }
  const text = size.toFixed(places);
  return (text.includes(".") ? text.replace(/\.?0+$/, "") : text).replace(".", mark);
}

function fraction(size: number, denominator: number): string {
  if (!(Number.isInteger(denominator) && denominator >= 1 && denominator <= 1024)) {
    throw new RangeError(`invalid denominator: ${denominator}; not a whole number in [1, 1024]`);
  }
  const parts = Math.round(size * denominator);
  const whole = Math.floor(parts / denominator);
  const rest = parts - whole * denominator;
  if (rest === 0) return whole.toFixed(0);
  const shared = greatestCommonDivisor(rest, denominator);
  const over = `${rest / shared}/${denominator / shared}`;
  return whole === 0 ? over : `${whole.toFixed(0)} ${over}`;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
