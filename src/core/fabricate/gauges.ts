// Thickness by gauge number. The same number means another thickness in another table: never a gauge without its table.
// Numbers 10 to 20 of each table are held to their sources by tests; the rest is from memory of the same tables.

import type { GaugeTable } from "../job/fabricationChoices";

const INCH = 25.4;

/** mm; a thickness this near a gauge of its table is that gauge, so that one read from four decimals still is. */
const SAME_THICKNESS = 1e-4;

/** A gauge table: its own name, where it comes from, and inches by gauge number; "000" is three noughts. */
export interface Gauge {
  readonly name: string;
  readonly source: string;
  readonly inches: ReadonlyMap<string, number>;
}

/** Ounces a square foot of wrought iron at 40 lb a square foot to the inch, by gauge from 0000000. */
const US_OUNCES = [
  320, 300, 280, 260, 240, 220, 200, 180, 170, 160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 45, 40, 36, 32, 28, 24, 22, 20,
  18, 16, 14, 12, 11, 10, 9, 8, 7, 6.5, 6, 5.5, 5, 4.5, 4.25, 4,
] as const;

/** lb a square foot to the inch of steel sheet in the Manufacturers' Standard. */
const STEEL_WEIGHT = 41.82;

const BIRMINGHAM_SHEET = [
  0.3532, 0.3147, 0.2804, 0.25, 0.2225, 0.1981, 0.1764, 0.157, 0.1398, 0.125, 0.1113, 0.0991, 0.0882, 0.0785, 0.0699, 0.0625, 0.0556,
  0.0495, 0.044, 0.0392, 0.0349, 0.03125, 0.02782, 0.02476, 0.02204, 0.01961, 0.01745, 0.015625, 0.0139, 0.0123,
] as const;

const BIRMINGHAM_WIRE = [
  0.3, 0.284, 0.259, 0.238, 0.22, 0.203, 0.18, 0.165, 0.148, 0.134, 0.12, 0.109, 0.095, 0.083, 0.072, 0.065, 0.058, 0.049, 0.042, 0.035,
  0.032, 0.028, 0.025, 0.022, 0.02, 0.018, 0.016, 0.014, 0.013, 0.012,
] as const;

const IMPERIAL_WIRE = [
  0.3, 0.276, 0.252, 0.232, 0.212, 0.192, 0.176, 0.16, 0.144, 0.128, 0.116, 0.104, 0.092, 0.08, 0.072, 0.064, 0.056, 0.048, 0.04, 0.036,
  0.032, 0.028, 0.024, 0.022, 0.02, 0.018, 0.0164, 0.0148, 0.0136, 0.0124,
] as const;

export const GAUGES: Readonly<Record<GaugeTable, Gauge>> = {
  "us-standard": {
    name: "US Standard", source: "15 U.S.C. 206 (Act of 1893)", inches: numbered(US_OUNCES.map((ounces) => ounces / 640), -6),
  },
  "manufacturers-standard": {
    name: "Manufacturers' Standard", source: "weights of the US Standard at 41.82 lb a square foot to the inch, to four places",
    inches: numbered(US_OUNCES.slice(9).map((ounces) => Math.round((ounces / 16 / STEEL_WEIGHT) * 1e4) / 1e4), 3),
  },
  "brown-and-sharpe": {
    name: "Brown & Sharpe (AWG)", source: "0.005 × 92^((36 - n) / 39), ASTM B258",
    inches: numbered(Array.from({ length: 44 }, (_, i) => 0.005 * 92 ** ((39 - i) / 39)), -3),
  },
  "birmingham-sheet": { name: "Birmingham sheet gauge (BG)", source: "Order in Council, 10 July 1914", inches: numbered(BIRMINGHAM_SHEET, 1) },
  "birmingham-wire": { name: "Birmingham wire gauge (Stubs)", source: "Holtzapffel's table", inches: numbered(BIRMINGHAM_WIRE, 1) },
  "imperial-wire": { name: "Imperial standard wire gauge (SWG)", source: "Holtzapffel's table, standard of 1884", inches: numbered(IMPERIAL_WIRE, 1) },
};

/** Thickness in mm of a gauge in a table ("16", "00"), null when the table has no such gauge. */
export function gaugeThickness(table: GaugeTable, gauge: string): number | null {
  const inches = GAUGES[table].inches.get(gauge);
  return inches === undefined ? null : inches * INCH;
}

/** The gauge of a table that a thickness in mm is, null when it is none of them. */
export function gaugeOf(table: GaugeTable, thickness: number): string | null {
  const found = [...GAUGES[table].inches].find(([, inches]) => Math.abs(inches * INCH - thickness) <= SAME_THICKNESS);
  return found?.[0] ?? null;
}

/** Thicknesses by number from `first` on; 0 is "0", -1 is "00". */
function numbered(inches: readonly number[], first: number): ReadonlyMap<string, number> {
  return new Map(inches.map((thickness, i) => [first + i > 0 ? String(first + i) : "0".repeat(1 - first - i), thickness]));
}
