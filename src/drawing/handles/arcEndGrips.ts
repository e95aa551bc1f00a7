// The grips of a hollow or round end, in the plane of its profile: the crown, and a point of the arc that shows the radius.

import { LIMITS, type HollowProfile, type NoseProfile, type Vec2 } from "../../core/index";
import { type Grip, freeGrip, within } from "./grip";

/** Where on the arc its radius is shown: this part of the radius, or of the pipe's, beside the crown. */
const BESIDE = Math.SQRT1_2;

/** Flattest arc that a drag makes, in radii of the pipe. */
const FLATTEST = 100;

export function arcEndGrips(profile: HollowProfile | NoseProfile, end: "top" | "bottom", radius: number): Grip[] {
  const crown: Vec2 = { x: profile.centre, y: profile.height };
  const up = (profile.shape === "hollow") === (end === "top") ? 1 : -1;
  const side = profile.centre > 0 ? -1 : 1;
  const pointFor = (value: number): Vec2 => {
    const x = BESIDE * Math.min(value, radius);
    return { x: crown.x + side * x, y: crown.y + up * (value - Math.sqrt(value * value - x * x)) };
  };
  return [
    freeGrip("crown", "profile.centre", "profile.height", crown),
    {
      kind: "size", name: "radius", field: "profile.radius", quantity: "length", value: profile.radius, point: pointFor(profile.radius), pointFor,
      valueAt: ({ x, y }) => radiusThrough(x - crown.x, up * (y - crown.y), radius),
      put: (value) => ({ "profile.radius": value }),
      fits: [{ value: radius, why: "own-radius" }],
    },
  ];
}

/** Radius of the circle that touches level at the crown and runs through the point `across` and `off` from it. */
function radiusThrough(across: number, off: number, radius: number): number {
  const flattest = Math.min(FLATTEST * radius, LIMITS.radius.max);
  if (off <= 0) return flattest;
  return within((across * across + off * off) / (2 * off), LIMITS.radius.min, flattest);
}
