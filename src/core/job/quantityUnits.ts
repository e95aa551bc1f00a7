import type { Units } from "./job";

// The units a maker may type after a number, and how large they are in mm or degrees.

/** What is asked for: a length (mm), an angle (degrees), or a plain number. */
export type QuantityKind = "length" | "angle" | "count";

/** `size` in mm or degrees. `then`: the smaller unit that may follow directly, as in 5' 3". */
export interface Unit {
  size: number;
  then?: Unit;
}

/** The international inch, exact. */
export const MM_PER_INCH = 25.4;

const inch: Unit = { size: MM_PER_INCH };
const foot: Unit = { size: 12 * MM_PER_INCH, then: inch };
const second: Unit = { size: 1 / 3600 };
const minute: Unit = { size: 1 / 60, then: second };
const degree: Unit = { size: 1, then: minute };

const UNITS: Record<QuantityKind, ReadonlyMap<string, Unit>> = {
  length: new Map([
    ...named({ size: 1 }, "mm"),
    ...named({ size: 10 }, "cm"),
    ...named({ size: 1000 }, "m"),
    ...named(inch, "in", "inch", "inches", '"', "″", "”"),
    ...named(foot, "ft", "foot", "feet", "'", "′", "’"),
  ]),
  angle: new Map([
    ...named(degree, "deg", "degree", "degrees", "°", "º"),
    ...named({ size: 180 / Math.PI }, "rad"),
    ...named(minute, "'", "′", "’"),
    ...named(second, '"', "″", "”"),
  ]),
  count: new Map(),
};

function named(unit: Unit, ...names: string[]): [string, Unit][] {
  return names.map((name) => [name, unit]);
}

/** The unit of that name (small letters) for this kind of quantity; undefined when there is none. */
export function unitNamed(name: string, kind: QuantityKind): Unit | undefined {
  return UNITS[kind].get(name);
}

/** The size, in mm or degrees, of a number typed or shown without a unit. */
export function plainUnitSize(kind: QuantityKind, units: Units): number {
  return kind === "length" && units === "inch" ? MM_PER_INCH : 1;
}
