import * as v from "valibot";
import { CHOICES, LIMITS } from "./limits";
import { number, whole, withDefault } from "./schemaFields";

// The shape of the shop's choices. All may be left out; a width, once asked for, may not.

const width = number(LIMITS.allowance);

const seam = v.variant("kind", [
  v.strictObject({ kind: v.literal("butt"), gap: withDefault(LIMITS.rootGap) }),
  v.strictObject({ kind: v.literal("lap"), width, share: withDefault(LIMITS.lapShare) }),
  v.strictObject({ kind: v.literal("grooved"), width, share: withDefault(LIMITS.groovedShare) }),
]);

/** 0 says that the flange is not slit. */
const slits = v.optional(v.union([v.literal(0), number(LIMITS.slits)]), 0);

const edge = v.variant("kind", [
  v.strictObject({ kind: v.literal("none") }),
  v.strictObject({ kind: v.picklist(["hem", "double-hem"]), width }),
  v.strictObject({ kind: v.literal("wired"), wire: number(LIMITS.wire), thickness: v.optional(v.boolean(), false) }),
  v.strictObject({ kind: v.literal("flange"), width, slits }),
]);

const finish = v.optional(edge, { kind: CHOICES.edgeFinish.default });

const plate = v.nullable(v.strictObject({
  fit: v.optional(v.picklist(CHOICES.plateFit.of), CHOICES.plateFit.default),
  gap: withDefault(LIMITS.plateGap),
}));

/** The section `fabrication` of a job. */
export const fabricationSchema = v.strictObject({
  purpose: v.optional(v.picklist(CHOICES.purpose.of), CHOICES.purpose.default),
  surface: v.optional(v.picklist(CHOICES.surface.of), CHOICES.surface.default),
  kFactor: withDefault(LIMITS.kFactor),
  paper: withDefault(LIMITS.paper),
  hand: v.optional(v.picklist(CHOICES.hand.of), CHOICES.hand.default),
  material: v.optional(v.picklist(CHOICES.material.of), CHOICES.material.default),
  density: v.optional(v.nullable(number(LIMITS.density)), null),
  gauge: v.optional(v.nullable(v.picklist(CHOICES.gauge.of)), null),
  quantity: v.optional(whole(LIMITS.quantity), LIMITS.quantity.default),
  seam: v.optional(seam, { kind: CHOICES.seamJoint.default }),
  edges: v.optional(v.strictObject({ top: finish, bottom: finish }), {}),
  plates: v.optional(v.strictObject({ top: v.optional(plate, null), bottom: v.optional(plate, null) }), {}),
});
