import { formatQuantity, type Job, type QuantityKind } from "../../core/index";
import { TRADE, type TradeWords } from "../../drawing/tradeWords";
import type { Settings } from "../store/settings";

// How lengths, angles and counts are written on this screen, and in whose words: units of the job, the rest from the settings.

/** A ratio is a number without a unit that need not be whole. */
export type Quantity = "length" | "angle" | "count" | "ratio";

/** What is typed for a quantity, as the core reads and writes it. */
export function kindOf(quantity: Quantity): QuantityKind {
  return quantity === "ratio" ? "count" : quantity;
}

export interface Format {
  readonly units: Job["units"];
  /** "mm" or "in". */
  readonly unit: string;
  readonly trade: TradeWords;
  /** As the drawing and the table show it: rounded to the settings; no unit. */
  figure(value: number, quantity: Quantity): string;
  /** As a field shows it: fine enough that nothing typed is hidden; no unit. */
  field(value: number, quantity: Quantity): string;
  length(mm: number): string;
  /** With its degree sign. */
  angle(degrees: number): string;
  /** Square mm or square inches, with the unit. */
  area(mm2: number): string;
}

const mmPerInch = 25.4;
const placesOfAngle = 2;
const placesOfField = { mm: 4, inch: 5 };

/** A value beyond this would be no dimension; it is written as a power of ten. */
const writable = 1e15;

export function formatOf(units: Job["units"], settings: Pick<Settings, "places" | "denominator" | "comma"> & Partial<Pick<Settings, "words">>): Format {
  const decimalMark = settings.comma ? "," : ".";
  const write = (value: number, quantity: Quantity, places: number, denominator: number): string => {
    if (!(Math.abs(value) < writable)) return value.toExponential(2);
    const fraction = quantity === "length" && units === "inch" && denominator > 0;
    return formatQuantity(value, { units, kind: kindOf(quantity), places, decimalMark, ...(fraction ? { style: "fraction", denominator } : {}) });
  };
  const lengthPlaces = units === "inch" ? settings.places + 1 : settings.places;
  const figure = (value: number, quantity: Quantity) => write(value, quantity, quantity === "length" ? lengthPlaces : placesOfAngle, settings.denominator);
  const field = (value: number, quantity: Quantity) => {
    const parts = (value / mmPerInch) * settings.denominator;
    // A fraction is shown only when it is the value itself, within a millionth of a part.
    return write(value, quantity, placesOfField[units], Math.abs(parts - Math.round(parts)) < 1e-6 ? settings.denominator : 0);
  };
  return {
    units,
    unit: units === "inch" ? "in" : "mm",
    trade: TRADE[settings.words ?? "stretch-out"],
    figure,
    field,
    length: (mm) => figure(mm, "length"),
    angle: (degrees) => `${figure(degrees, "angle")}°`,
    area: (mm2) => (units === "inch" ? `${write(mm2 / mmPerInch ** 2, "count", 3, 0)} in²` : `${write(mm2, "count", 1, 0)} mm²`),
  };
}

/** What one press of an arrow key adds: 1 mm, a sixteenth of an inch, one degree, one, a hundredth of a ratio. */
export function stepOf(quantity: Quantity, units: Job["units"]): number {
  if (quantity === "ratio") return 0.01;
  return quantity === "length" && units === "inch" ? mmPerInch / 16 : 1;
}
