// The job: everything a maker says about the part and its pattern, as saved in a job file (version 2).
// Lengths in mm, angles in degrees. Meanings, ranges and defaults of every field: docs/job-format.md and limits.ts.

import type { ExerciseChoices } from "./exerciseChoices";
import type { FabricationChoices } from "./fabricationChoices";
import type { DrawnScale, Marking, ReadingSheet } from "./marking";

export interface Job {
  format: "flatwright-job";
  version: 2;
  title: string;
  note: string;
  /** How lengths are shown; the file is in mm either way. */
  units: Units;
  part: PipePart;
  development: DevelopmentChoices;
  drawing: DrawingChoices;
  fabrication: FabricationChoices;
  marking: Marking;
  /** Of one drawing, in a file that was saved with them. */
  readings: ReadingSheet | null;
  exercise: ExerciseChoices;
}

export type Units = "mm" | "inch";

export interface PipePart {
  kind: "pipe";
  diameter: number;
  /** Which diameter `diameter` is. */
  basis: "outside" | "inside" | "mean";
  thickness: number;
  /** Height of the square stock, from its base at 0. */
  length: number;
  attitude: "upright" | "lying";
  cuts: Cut[];
}

export type Cut = PlaneCut | ShapedCut | OpeningCut;

export interface CutBase {
  /** Unique in the job; small letters, figures and hyphens. */
  id: string;
  /** A cut that is off is kept in the job but not made. */
  on: boolean;
}

export type End = "top" | "bottom";

/** A plane; the side beyond it (above for the top end, below for the bottom end) is removed. */
export interface PlaneCut extends CutBase {
  kind: "plane";
  end: End;
  /** From square: 0 is a square cut. */
  angle: number;
  /** Where the plane is highest, anticlockwise from the front seen from above. */
  direction: number;
  /** The place on the plane whose height is given. */
  at: "axis" | "low" | "high";
  height: number;
}

/** A profile drawn in the view from `direction` and swept straight across the pipe. */
export interface ShapedCut extends CutBase {
  kind: "shaped";
  end: End;
  direction: number;
  profile: Profile;
}

export type Profile =
  | HollowProfile
  | NoseProfile
  | OgeeProfile
  | StepProfile
  | VeeProfile
  | FreeProfile;

/** A concave arc; `height` is that of its deepest point, `centre` the arc's place sideways. */
export interface HollowProfile {
  shape: "hollow";
  radius: number;
  centre: number;
  height: number;
}

/** A convex arc; `height` is that of its crown; level shoulders at the height of its centre. */
export interface NoseProfile {
  shape: "nose";
  radius: number;
  centre: number;
  height: number;
}

/** Two equal arcs, tangent in the middle, across the pipe. `radius` null: level at both ends. */
export interface OgeeProfile {
  shape: "ogee";
  low: number;
  high: number;
  rising: Side;
  radius: number | null;
}

/** Two levels with an upright between them at `position`. */
export interface StepProfile {
  shape: "step";
  low: number;
  high: number;
  rising: Side;
  position: number;
}

/** A notch with straight sides; `angle` is the included angle, `height` that of its point. */
export interface VeeProfile {
  shape: "vee";
  angle: number;
  centre: number;
  height: number;
}

/** A chain of lines and arcs from `start`. */
export interface FreeProfile {
  shape: "free";
  start: Point;
  legs: Leg[];
}

export type Side = "left" | "right";

/** A point of a profile: x to the right, z up along the axis, seen from outside. */
export interface Point {
  x: number;
  z: number;
}

export type Leg = LineLeg | RadiusLeg | CentreLeg;

export interface LineLeg {
  to: Point;
}

/** An arc of a given radius, turning left (anticlockwise) or right; `long` is the arc over half a turn. */
export interface RadiusLeg {
  to: Point;
  radius: number;
  turn: Side;
  long: boolean;
}

/** An arc about a given centre, turning left (anticlockwise) or right. */
export interface CentreLeg {
  to: Point;
  centre: Point;
  turn: Side;
}

/** A hole through the wall, drawn as seen from outside, looking at the wall. */
export interface OpeningCut extends CutBase {
  kind: "opening";
  outline: Outline;
  direction: number;
  /** Of the centre, from the base. */
  height: number;
  /** Of the centre, sideways to the right as seen from outside. */
  offset: number;
  /** The wall it is seen on, or that one and the one behind it. */
  through: "near" | "both";
}

export type Outline = RoundOutline | RectangleOutline | SlotOutline;

export interface RoundOutline {
  shape: "round";
  diameter: number;
}

/** `length` runs along the axis, `width` across, before being turned anticlockwise by `turn`. */
export interface RectangleOutline {
  shape: "rectangle";
  width: number;
  length: number;
  turn: number;
}

/** As the rectangle, with half-round ends at the far ends of its longer measure. */
export interface SlotOutline {
  shape: "slot";
  width: number;
  length: number;
  turn: number;
}

export interface DevelopmentChoices {
  seam: Seam;
  /** Even divisions of the girth. */
  stations: number;
  /** Adds stations at critical places. */
  critical: boolean;
  /** Directions of further stations. */
  extra: number[];
  /** The face of the sheet that looks up. */
  face: "inside" | "outside";
}

export type Seam = { at: NamedSeam } | { at: "angle"; angle: number };

export type NamedSeam = "shortest" | "longest" | "front" | "right" | "back" | "left";

export interface DrawingChoices {
  projection: "first" | "third";
  /** Of the last sheets made of it for a class, on which it is drawn by hand; null: none were made. */
  sheetScale: DrawnScale | null;
}
