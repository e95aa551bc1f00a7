import * as v from "valibot";
import { CHOICES, LIMITS } from "./limits";
import { list, number, withDefault } from "./schemaFields";

// The shape of a scheme of marks and of a sheet of readings. All of a scheme may be left out.

const text = v.pipe(v.string(), v.maxLength(LIMITS.markText.max));

/** A name of one's own. */
export const id = v.pipe(v.string(), v.maxLength(LIMITS.id.max), v.regex(/^[a-z0-9-]+$/));

const item = v.strictObject({
  id,
  text: v.optional(text, ""),
  marks: number(LIMITS.marks),
  by: v.optional(v.picklist(CHOICES.markedBy.of), CHOICES.markedBy.default),
});

/** The section `marking` of a job. */
export const markingSchema = v.strictObject({
  tolerance: withDefault(LIMITS.lengthTolerance),
  angle: withDefault(LIMITS.angleTolerance),
  girth: v.optional(v.picklist(CHOICES.girthRule.of), CHOICES.girthRule.default),
  items: v.optional(list(item, LIMITS.markItems), []),
});

const typed = v.optional(list(v.strictObject({ at: text, text }), LIMITS.typed), []);

/** The section `readings` of a job. */
export const readingsSchema = v.strictObject({
  scale: v.optional(v.nullable(v.picklist(CHOICES.drawnScale.of)), null),
  count: v.optional(text, ""),
  start: v.optional(text, ""),
  along: v.optional(v.picklist(CHOICES.along.of), CHOICES.along.default),
  values: typed,
  marks: typed,
});
