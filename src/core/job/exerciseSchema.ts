import * as v from "valibot";
import { CHOICES, LIMITS } from "./limits";
import { list, number, seam, whole } from "./schemaFields";

// The shape of what may differ from student to student. All may be left out; whether a range fits its number is found when it is used.

const range = v.strictObject({
  field: v.pipe(v.string(), v.maxLength(LIMITS.rangeField.max)),
  from: number(LIMITS.rangeEnd),
  to: number(LIMITS.rangeEnd),
  step: number(LIMITS.rangeStep),
});

const keeps = v.strictObject({
  inside: v.optional(v.boolean(), true),
  ordinate: v.optional(number(LIMITS.leastOrdinate), LIMITS.leastOrdinate.default),
  sheet: v.optional(v.nullable(v.strictObject({ width: number(LIMITS.room), height: number(LIMITS.room) })), null),
});

/** The section `exercise` of a job. */
export const exerciseSchema = v.strictObject({
  ranges: v.optional(list(range, LIMITS.ranges), []),
  seams: v.optional(list(seam, LIMITS.seams), []),
  hands: v.optional(list(v.picklist(CHOICES.hand.of), LIMITS.hands), []),
  keeps: v.optional(keeps, {}),
  seed: v.optional(whole(LIMITS.seed), LIMITS.seed.default),
});
