// A slanting plane that takes an end away.

import type { PlaneCutter } from "./cutter";
import type { Owner } from "./owner";

/** Where a plane is placed: `angle` from square in radians, [0, π/2); highest at `direction`; `height` in mm of the named place on the surface of `radius` mm. */
export interface PlanePlace {
  readonly angle: number;
  readonly direction: number;
  readonly at: "axis" | "low" | "high";
  readonly height: number;
}

/** The half-space above (top end) or below (bottom end) the plane, met on the surface of `radius` mm. @throws RangeError for an angle outside [0, π/2). */
export function planeCutter(place: PlanePlace, radius: number, removes: "above" | "below", owner: Owner): PlaneCutter {
  const { angle, direction, at, height } = place;
  if (!(angle >= 0 && angle < Math.PI / 2)) throw new RangeError(`invalid angle: ${angle}; not in [0, π/2)`);
  const slope = Math.tan(angle);
  const toAxis = { axis: 0, low: slope * radius, high: -slope * radius }[at];
  return { kind: "plane", owner, radius, height: height + toAxis, slope, direction, removes };
}
