// The grips of a step and of an ogee, in the plane of their profile: both levels; the riser, or the radius of the arcs.

import { LIMITS, type OgeeProfile, type StepProfile, type Vec2 } from "../../core/index";
import { type Grip, acrossGrip, alongGrip, within } from "./grip";

const FLATTEST = 100;

export function stepGrips({ low, high, rising, position }: StepProfile, radius: number): Grip[] {
  const way = rising === "right" ? 1 : -1;
  return [
    alongGrip("low", "profile.low", { x: (position - way * radius) / 2, y: low }),
    alongGrip("high", "profile.high", { x: (position + way * radius) / 2, y: high }),
    acrossGrip("position", "profile.position", { x: position, y: (low + high) / 2 }),
  ];
}

/** The ends on the contour; the radius at half the way of the arc at the low end. */
export function ogeeGrips({ low, high, rising, radius: given }: OgeeProfile, radius: number): Grip[] {
  const way = rising === "right" ? 1 : -1;
  const rise = high - low;
  const chord = Math.hypot(2 * radius, rise) / 2;
  const level = (chord * chord) / rise;
  const middle: Vec2 = { x: (-way * radius) / 2, y: low + rise / 4 };
  const off: Vec2 = { x: (way * rise) / (2 * chord), y: -radius / chord };
  const pointFor = (value: number): Vec2 => {
    const sagitta = value - Math.sqrt(Math.max(0, value * value - (chord * chord) / 4));
    return { x: middle.x + sagitta * off.x, y: middle.y + sagitta * off.y };
  };
  const valueAt = ({ x, y }: Vec2): number => {
    const sagitta = within((x - middle.x) * off.x + (y - middle.y) * off.y, 1e-9 * chord, chord / 2);
    return within(((chord * chord) / 4 + sagitta * sagitta) / (2 * sagitta), chord / 2, Math.min(FLATTEST * radius, LIMITS.radius.max));
  };
  const value = given ?? level;
  return [
    alongGrip("low", "profile.low", { x: -way * radius, y: low }),
    alongGrip("high", "profile.high", { x: way * radius, y: high }),
    {
      kind: "size", name: "radius", field: "profile.radius", quantity: "length", value, point: pointFor(value), pointFor, valueAt,
      put: (next) => ({ "profile.radius": next < chord / 2 ? chord / 2 : next }),
      fits: [{ value: level, why: "level-ends", values: { "profile.radius": null } }],
    },
  ];
}
