import * as v from "valibot";
import { CHOICES, LIMITS, type Limit } from "./limits";

// Fields that stand in several parts of the schema: numbers and lists, each within a row of the table of limits, and a seam.

/** A number within its limit. */
export const number = (limit: Limit) => v.pipe(v.number(), v.minValue(limit.min), v.maxValue(limit.max));

/** A number within its limit that may be left out. */
export const withDefault = (limit: Limit & { default: number }) => v.optional(number(limit), limit.default);

/** A whole number within its limit. */
export const whole = (limit: Limit) => v.pipe(v.number(), v.minValue(limit.min), v.maxValue(limit.max), v.integer());

/** A list whose entries are looked at only when there are not too many: a hostile file could have a million. */
export function list<const T extends v.GenericSchema>(item: T, limit: Limit) {
  const entries = v.pipe(v.array(item), v.minLength(limit.min), v.maxLength(limit.max));
  const lengthOnly = v.pipe(v.array(v.unknown()), v.maxLength(limit.max));
  const run: (typeof entries)["~run"] = (dataset, config) => {
    const overlong = Array.isArray(dataset.value) && dataset.value.length > limit.max;
    return overlong ? lengthOnly["~run"](dataset, config) : entries["~run"](dataset, config);
  };
  return { ...entries, "~run": run };
}

/** Where the pipe is opened. */
export const seam = v.variant("at", [
  v.strictObject({ at: v.picklist(CHOICES.namedSeam.of) }),
  v.strictObject({ at: v.literal("angle"), angle: number(LIMITS.direction) }),
]);
