// To which round numbers does a drag go? To the finest whose steps a hand can still tell apart on the sheet.

import type { Units } from "../../core/index";

const INCH = 25.4;

/** Sheet mm: about a pixel, the shortest step worth taking. */
const TELLABLE = 0.25;

const LENGTHS: Readonly<Record<Units, readonly number[]>> = {
  mm: [0.1, 0.5, 1, 5, 10, 50, 100, 500, 1000],
  inch: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 6, 12].map((inches) => inches * INCH),
};

const ANGLES = [1, 5, 15];

/** What is kept of a number when it may go anywhere. */
const FINEST: Readonly<Record<Units, number>> = { mm: 0.01, inch: INCH / 1000 };

/** The step in mm or degrees; `mmPerUnit` is how far the handle moves on the sheet for a mm or a degree. */
export function snapStep(quantity: "length" | "angle", units: Units, mmPerUnit: number): number {
  const steps = quantity === "length" ? LENGTHS[units] : ANGLES;
  return steps.find((step) => step * mmPerUnit >= TELLABLE) ?? steps.at(-1) ?? 1;
}

/** The nearest whole number of steps, free of the noise of counting them. */
export function toStep(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}

/** The value as a drag keeps it when it does not snap. */
export function toFinest(value: number, quantity: "length" | "angle", units: Units): number {
  return toStep(value, quantity === "angle" ? 0.01 : FINEST[units]);
}
