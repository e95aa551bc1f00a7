import type { Format } from "./format";

/** A small length: hundredths of a millimetre, or decimals of an inch, whatever the fractions in use. */
export function smallLength(mm: number, format: Format, unit = true): string {
  const figure = format.units === "inch" ? (mm / 25.4).toFixed(4) : String(Number(mm.toFixed(mm < 0.1 ? 3 : 2)));
  return unit ? `${figure} ${format.unit}` : figure;
}
