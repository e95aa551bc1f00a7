// What is measured on a view, before it is placed: lengths, and sizes written out.

import type { Vec2 } from "../../core/index";
import type { Ref } from "../display";

/** A length on a broadside view, in model coordinates (sideways, height). */
export interface ViewDimension {
  readonly along: "axis" | "across";
  readonly a: Vec2;
  readonly b: Vec2;
  readonly text: string;
  readonly group: "ends" | "openings";
  readonly ref: Ref;
  /** Of a width: the lowest and highest height of the opening, beside which it may be written. */
  readonly beside?: readonly [number, number];
}

/** A size written out, in model coordinates. */
export interface ViewNote {
  readonly centre: Vec2;
  readonly text: string;
  /** A second line. */
  readonly under?: string;
  readonly ref: Ref;
}

export interface ViewMeasures {
  readonly lengths: readonly ViewDimension[];
  readonly notes: readonly ViewNote[];
}
