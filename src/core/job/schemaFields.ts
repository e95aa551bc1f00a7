import * as v from "valibot";
import type { Limit } from "./limits";

// Numbers of the schema, each within a row of the table of limits.

/** A number within its limit. */
export const number = (limit: Limit) => v.pipe(v.number(), v.minValue(limit.min), v.maxValue(limit.max));

/** A number within its limit that may be left out. */
export const withDefault = (limit: Limit & { default: number }) => v.optional(number(limit), limit.default);

/** A whole number within its limit. */
export const whole = (limit: Limit) => v.pipe(v.number(), v.minValue(limit.min), v.maxValue(limit.max), v.integer());
