// What is marked on the sheet, each with its meaning; how it is drawn is for those who draw. Pattern coordinates, mm.

import type { Line, Segment } from "../geometry/segment";
import type { Vec2 } from "../geometry/vector";
import type { End } from "../job/job";
import type { AllowancePlace } from "./place";

export type Direction = "front" | "right" | "back" | "left";

export type Mark =
  /** A quarter line, one for each kept stretch of its element. */
  | { readonly kind: "quarter"; readonly direction: Direction; readonly line: Line }
  /** Where an edge is bent or rolled over. */
  | { readonly kind: "fold"; readonly place: AllowancePlace; readonly path: readonly Segment[] }
  /** The net line of the seam under a lap or a groove. */
  | { readonly kind: "seam"; readonly place: AllowancePlace; readonly path: readonly Segment[] }
  /** A slit across a flange, from the net edge outwards. */
  | { readonly kind: "slit"; readonly line: Line }
  /** A station at the net edge; `into` is the unit vector into the sheet. */
  | { readonly kind: "tick"; readonly label: string; readonly end: End; readonly at: Vec2; readonly into: Vec2 }
  /** Where to prick through: ends of quarter lines, of folds, of the elements along which a blank is rolled. */
  | { readonly kind: "prick"; readonly on: "quarter" | "fold" | "roll"; readonly at: Vec2 }
  /** Places with one id meet. */
  | { readonly kind: "match"; readonly id: string; readonly at: Vec2; readonly into: Vec2 }
  /** An arrow to the top end. */
  | { readonly kind: "top"; readonly line: Line }
  /** An arrow along the way the blank is rolled; a template has none. */
  | { readonly kind: "rolling"; readonly line: Line };

/** A straight line between two points. */
export function lineBetween(from: Vec2, to: Vec2): Line {
  return { kind: "line", from, to };
}

/** A place to be pricked through. */
export function prick(on: "quarter" | "fold" | "roll", at: Vec2): Mark {
  return { kind: "prick", on, at };
}

/** A bend line, pricked at its ends. */
export function foldMarks(place: AllowancePlace, path: readonly Segment[]): Mark[] {
  const [first, last] = [path[0], path.at(-1)];
  return first && last ? [{ kind: "fold", place, path }, prick("fold", first.from), prick("fold", last.to)] : [];
}
