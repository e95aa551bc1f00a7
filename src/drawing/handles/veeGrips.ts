// The grips of a vee, in the plane of its profile: its point, and a place on its flank that shows the angle.

import { LIMITS, type Vec2, type VeeProfile, degrees, radians } from "../../core/index";
import { type Grip, freeGrip, within } from "./grip";

/** Part of the way from the point to the contour at which the flank is held. */
const OUT = 0.7;

/** `reach` bounds the rise of the place on the flank, mm. */
export function veeGrips({ angle, centre, height }: VeeProfile, end: "top" | "bottom", radius: number, reach: number): Grip[] {
  const up = end === "top" ? 1 : -1;
  const side = centre > 0 ? -1 : 1;
  const run = OUT * (radius + Math.abs(centre));
  const pointFor = (value: number): Vec2 => {
    const slope = 1 / Math.tan(radians(value / 2));
    const out = run * slope > reach ? reach / slope : run;
    return { x: centre + side * out, y: height + up * out * slope };
  };
  return [
    freeGrip("point", "profile.centre", "profile.height", { x: centre, y: height }),
    {
      kind: "size", name: "angle", field: "profile.angle", quantity: "angle", value: angle, point: pointFor(angle), pointFor,
      valueAt: ({ x, y }) => within(2 * degrees(Math.atan2(Math.abs(x - centre), up * (y - height))), LIMITS.veeAngle.min, LIMITS.veeAngle.max),
      put: (value) => ({ "profile.angle": value }),
    },
  ];
}
