import * as v from "valibot";
import { exerciseSchema } from "./exerciseSchema";
import { fabricationSchema } from "./fabricationSchema";
import { CHOICES, LIMITS } from "./limits";
import { id, markingSchema, readingsSchema } from "./markingSchema";
import { list, number, seam, whole, withDefault } from "./schemaFields";

// The shape of a job of the present version. Unknown fields are refused; fields with a default may be left out.
// Checks that look at two fields at once are in crossCheck.ts.

const cutBase = {
  id,
  on: v.optional(v.boolean(), true),
};

const end = v.picklist(CHOICES.end.of);
const side = v.picklist(CHOICES.side.of);
const direction = withDefault(LIMITS.direction);
const height = number(LIMITS.height);
const sideways = withDefault(LIMITS.sideways);
const radius = number(LIMITS.radius);

const point = v.strictObject({ x: number(LIMITS.sideways), z: height });

const lineLeg = v.strictObject({ to: point });
const radiusLeg = v.strictObject({ to: point, radius, turn: side, long: v.optional(v.boolean(), false) });
const centreLeg = v.strictObject({ to: point, centre: point, turn: side });

/** The three kinds of leg, told apart by the fields they have. */
export const LEG_KINDS = [lineLeg, radiusLeg, centreLeg] as const;

/** A leg; checked as the kind whose own field it has, so that the problem is said at that field. */
export const legSchema = v.lazy((input): (typeof LEG_KINDS)[number] => {
  if (typeof input !== "object" || input === null) return lineLeg;
  if ("centre" in input) return centreLeg;
  return "radius" in input ? radiusLeg : lineLeg;
});

const profile = v.variant("shape", [
  v.strictObject({ shape: v.literal("hollow"), radius, centre: sideways, height }),
  v.strictObject({ shape: v.literal("nose"), radius, centre: sideways, height }),
  v.strictObject({
    shape: v.literal("ogee"),
    low: height,
    high: height,
    rising: side,
    radius: v.optional(v.nullable(radius), null),
  }),
  v.strictObject({ shape: v.literal("step"), low: height, high: height, rising: side, position: sideways }),
  v.strictObject({ shape: v.literal("vee"), angle: number(LIMITS.veeAngle), centre: sideways, height }),
  v.strictObject({ shape: v.literal("free"), start: point, legs: list(legSchema, LIMITS.legs) }),
]);

const size = number(LIMITS.opening);
const turn = withDefault(LIMITS.turn);

const outline = v.variant("shape", [
  v.strictObject({ shape: v.literal("round"), diameter: size }),
  v.strictObject({ shape: v.literal("rectangle"), width: size, length: size, turn }),
  v.strictObject({ shape: v.literal("slot"), width: size, length: size, turn }),
]);

const cut = v.variant("kind", [
  v.strictObject({
    ...cutBase,
    kind: v.literal("plane"),
    end,
    angle: number(LIMITS.planeAngle),
    direction,
    at: v.optional(v.picklist(CHOICES.planeAt.of), CHOICES.planeAt.default),
    height,
  }),
  v.strictObject({ ...cutBase, kind: v.literal("shaped"), end, direction, profile }),
  v.strictObject({
    ...cutBase,
    kind: v.literal("opening"),
    outline,
    direction,
    height,
    offset: sideways,
    through: v.optional(v.picklist(CHOICES.through.of), CHOICES.through.default),
  }),
]);

const part = v.strictObject({
  kind: v.literal("pipe"),
  diameter: number(LIMITS.diameter),
  basis: v.optional(v.picklist(CHOICES.basis.of), CHOICES.basis.default),
  thickness: withDefault(LIMITS.thickness),
  length: number(LIMITS.length),
  attitude: v.optional(v.picklist(CHOICES.attitude.of), CHOICES.attitude.default),
  cuts: v.optional(list(cut, LIMITS.cuts), []),
});

const development = v.strictObject({
  seam: v.optional(seam, { at: CHOICES.namedSeam.default }),
  stations: v.optional(whole(LIMITS.stations), LIMITS.stations.default),
  critical: v.optional(v.boolean(), false),
  extra: v.optional(list(number(LIMITS.direction), LIMITS.extra), []),
  face: v.optional(v.picklist(CHOICES.face.of), CHOICES.face.default),
});

const drawing = v.strictObject({
  projection: v.optional(v.picklist(CHOICES.projection.of), CHOICES.projection.default),
  sheetScale: v.optional(v.nullable(v.picklist(CHOICES.drawnScale.of)), null),
});

export const jobSchema = v.strictObject({
  format: v.literal("flatwright-job"),
  version: v.literal(2),
  title: v.optional(v.pipe(v.string(), v.maxLength(LIMITS.title.max)), ""),
  note: v.optional(v.pipe(v.string(), v.maxLength(LIMITS.note.max)), ""),
  units: v.optional(v.picklist(CHOICES.units.of), CHOICES.units.default),
  part,
  development: v.optional(development, {}),
  drawing: v.optional(drawing, {}),
  fabrication: v.optional(fabricationSchema, {}),
  marking: v.optional(markingSchema, {}),
  readings: v.optional(v.nullable(readingsSchema), null),
  exercise: v.optional(exerciseSchema, {}),
});
