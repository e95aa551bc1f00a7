// How much sheet does a bend take?

/** A bend: inside radius and thickness in mm, `angle` turned through in radians, in (0, π]. */
export interface Bend {
  readonly insideRadius: number;
  readonly thickness: number;
  readonly angle: number;
}

/** Length in mm of the neutral line in a bend, which lies at kFactor × thickness from the inside. @throws RangeError outside the ranges. */
export function bendAllowance({ insideRadius, thickness, angle }: Bend, kFactor: number): number {
  if (!(insideRadius >= 0)) throw new RangeError(`invalid inside radius: ${insideRadius}; not in [0, ∞)`);
  if (!(thickness >= 0)) throw new RangeError(`invalid thickness: ${thickness}; not in [0, ∞)`);
  if (!(angle > 0 && angle <= Math.PI)) throw new RangeError(`invalid angle: ${angle}; not in (0, π]`);
  if (!(kFactor >= 0 && kFactor <= 1)) throw new RangeError(`invalid K-factor: ${kFactor}; not in [0, 1]`);
  return angle * (insideRadius + kFactor * thickness);
}

/**
 * K-factor of DIN 6935 for an inside radius r on sheet of thickness s (mm, both > 0): k / 2 with k = 0.65 + 0.5 log10(r / s),
 * at most 1 (r / s over 5: the mean line). As quoted in Tabellenbuch Metall, "Zuschnittermittlung".
 */
export function dinKFactor(insideRadius: number, thickness: number): number {
  if (!(insideRadius > 0)) throw new RangeError(`invalid inside radius: ${insideRadius}; not in (0, ∞)`);
  if (!(thickness > 0)) throw new RangeError(`invalid thickness: ${thickness}; not in (0, ∞)`);
  const ratio = insideRadius / thickness;
  return ratio > 5 ? 0.5 : Math.max(0, Math.min(1, 0.65 + 0.5 * Math.log10(ratio))) / 2;
}

/**
 * What is taken off the sum of the outside legs for a bend, by DIN 6935, in mm. Leg lengths run to the meeting of the
 * outside faces up to 90° of turning, beyond that to the tangent square to the leg. Angles turned through under 15° take off nothing.
 */
export function bendDeduction(bend: Bend, kFactor: number): number {
  const { insideRadius, thickness, angle } = bend;
  const taken = bendAllowance(bend, kFactor);
  if (angle < (15 / 180) * Math.PI - 1e-12) return 0;
  const corner = insideRadius + thickness;
  return (angle >= Math.PI / 2 - 1e-12 ? 2 * corner : 2 * corner * Math.tan(angle / 2)) - taken;
}
