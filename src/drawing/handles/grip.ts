// Where a feature can be taken hold of, in the feature's own frame: x across (mm or degrees), y along the axis (mm).

import type { Vec2 } from "../../core/index";

export type Value = number | string | boolean | null;

/** New values of job fields, by their paths within the part or the cut: `height`, `profile.legs.0.to.x`. */
export type Values = Readonly<Record<string, Value>>;

/** A field that is one coordinate of a point. */
export interface Coordinate {
  readonly field: string;
  readonly quantity: "length" | "angle";
}

/** A point whose coordinates are fields; a coordinate without one stays. */
export interface PointGrip {
  readonly kind: "point";
  readonly name: string;
  readonly point: Vec2;
  readonly across: Coordinate | null;
  readonly along: Coordinate | null;
  readonly put: (point: Vec2) => Values;
  /** Coordinates at which something fits, beyond those shared by all features. */
  readonly fits?: { readonly across?: readonly Fit[]; readonly along?: readonly Fit[] };
}

/** A point that shows one size: the point gives the value and the value the point. */
export interface SizeGrip {
  readonly kind: "size";
  readonly name: string;
  readonly point: Vec2;
  readonly field: string;
  readonly quantity: "length" | "angle";
  readonly value: number;
  /** The value for which the feature runs through the point, within its limits. */
  readonly valueAt: (point: Vec2) => number;
  /** Where the grip stands for a value. */
  readonly pointFor: (value: number) => Vec2;
  /** `point` is where the grip was dragged, when it was. */
  readonly put: (value: number, point?: Vec2) => Values;
  readonly fits?: readonly Fit[];
}

export type Grip = PointGrip | SizeGrip;

/** Why a value fits. */
export type Why = "level" | "in-line" | "axis" | "contour" | "tangent" | "own-radius" | "level-ends" | "same-direction" | "side" | "upright";

/** A value at which a feature fits something else, and the clause of that when it is another one. */
export interface Fit {
  readonly value: number;
  readonly why: Why;
  readonly clause?: string;
  /** What is to be put instead of the bare value. */
  readonly values?: Values;
}

const none: Coordinate | null = null;

/** A grip that moves along the axis only. */
export function alongGrip(name: string, field: string, point: Vec2): PointGrip {
  return { kind: "point", name, point, across: none, along: { field, quantity: "length" }, put: ({ y }) => ({ [field]: y }) };
}

/** A grip that moves across the axis only. */
export function acrossGrip(name: string, field: string, point: Vec2): PointGrip {
  return { kind: "point", name, point, across: { field, quantity: "length" }, along: none, put: ({ x }) => ({ [field]: x }) };
}

/** A grip that moves freely, both coordinates being lengths. */
export function freeGrip(name: string, across: string, along: string, point: Vec2): PointGrip {
  return {
    kind: "point", name, point, across: { field: across, quantity: "length" }, along: { field: along, quantity: "length" },
    put: ({ x, y }) => ({ [across]: x, [along]: y }),
  };
}

/** The value held between two bounds; `low` for what is no number. */
export function within(value: number, low: number, high: number): number {
  return value >= low ? Math.min(value, high) : low;
}
