// What a cutter is: a solid that takes material away. Heights z in mm along the pipe's axis, directions θ in radians
// from the front; t is the place across the line of sight, to the right as seen from outside.

import type { Owner } from "./owner";

/** What every cutter says: whose edges it makes, and on which surface its cut is found. */
interface CutterBase {
  readonly owner: Owner;
  /** Radius in mm of the surface on which the cut is found: an element is met at this distance from the axis. */
  readonly radius: number;
}

/** A half-space bounded by z = height + slope · ρ cos(θ - direction), ρ the distance from the axis. */
export interface PlaneCutter extends CutterBase {
  readonly kind: "plane";
  readonly height: number;
  readonly slope: number;
  /** Where the plane is highest. */
  readonly direction: number;
  readonly removes: "above" | "below";
}

/** A closed outline in (t, z), moved along its direction through the depths [near, far] from the axis, outward positive. */
export interface SweepCutter extends CutterBase {
  readonly kind: "sweep";
  readonly direction: number;
  readonly reaches: readonly Reach[];
  readonly depth: readonly [number, number];
}

export type Cutter = PlaneCutter | SweepCutter;

/**
 * A stretch of an outline that has one height at each t in [from, to]: a straight line, or an upper (side 1)
 * or lower (side -1) stretch of a circle. Stretches of constant t bound nothing an element can meet but along itself.
 */
export type Reach =
  | { readonly kind: "line"; readonly from: number; readonly to: number; readonly z: number; readonly slope: number }
  | {
      readonly kind: "arc"; readonly from: number; readonly to: number;
      readonly t: number; readonly z: number; readonly radius: number; readonly side: 1 | -1;
    };

/** One face of one cutter: the plane itself (face 0), or a reach of a sweep. */
export interface FaceRef {
  readonly cutter: number;
  readonly face: number;
}
