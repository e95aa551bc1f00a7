// A closed outline moved straight through the pipe: a shaped end, an opening.

import type { Arc, Line } from "../geometry/segment";
import type { SweepCutter } from "./cutter";
import type { Owner } from "./owner";
import { reachesOf } from "./reach";

/**
 * The solid swept by a closed outline in (t, z) mm, along `direction` (radians), from `near` to `far` mm off the axis
 * (outward positive, infinities allowed), met on the surface of `radius` mm.
 */
export function outlineCutter(
  outline: readonly (Line | Arc)[], direction: number, depth: readonly [number, number], radius: number, owner: Owner,
): SweepCutter {
  return { kind: "sweep", owner, radius, direction, reaches: reachesOf(outline), depth };
}
