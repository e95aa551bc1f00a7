// What the shop says about a piece: what the pattern is for, sheet, seam, edges, end plates. Lengths in mm.
// Meanings, ranges and defaults of every field: docs/job-format.md and limits.ts.

import type { End } from "./job";

export interface FabricationChoices {
  /** A blank to be rolled, or a template to be wrapped round a pipe that is there. */
  purpose: "blank" | "wrap";
  /** The surface on which the height of a cut is found; "clear" takes away what either the outside or the inside would. A wrap's is the outside. */
  surface: "mean" | "outside" | "inside" | "clear";
  /** Radius of the neutral line = inside radius + kFactor × thickness. */
  kFactor: number;
  /** Thickness of a wrap's own sheet. */
  paper: number;
  /** The piece as described, or its mirror image. */
  hand: "described" | "opposite";
  material: Material;
  /** In kg/m³, instead of the material's usual one. */
  density: number | null;
  /** The table by whose gauge numbers the thickness is called; null to call it by its measure only. */
  gauge: GaugeTable | null;
  quantity: number;
  seam: SeamJoint;
  edges: Record<End, EdgeFinish>;
  plates: Record<End, PlateChoice | null>;
}

export type Material = "steel" | "galvanized" | "stainless" | "aluminium" | "copper" | "brass" | "zinc" | "lead";

export type GaugeTable = "us-standard" | "manufacturers-standard" | "brown-and-sharpe" | "birmingham-sheet" | "birmingham-wire" | "imperial-wire";

export type SeamJoint = ButtSeam | LapSeam | GroovedSeam;

/** `gap` is left between the two edges: half of it comes off each. */
export interface ButtSeam {
  kind: "butt";
  gap: number;
}

/** `share` of the width goes on the edge where the girth begins, the rest on the other. */
export interface LapSeam {
  kind: "lap";
  width: number;
  share: number;
}

/** Three times the finished width is added in all; `share` of that where the girth begins. */
export interface GroovedSeam {
  kind: "grooved";
  width: number;
  share: number;
}

export type EdgeFinish = { kind: "none" } | HemEdge | WiredEdge | FlangeEdge;

/** Folded over once, or twice: `width` of one fold. */
export interface HemEdge {
  kind: "hem" | "double-hem";
  width: number;
}

/** Rolled over a wire of diameter `wire`; `thickness` adds the sheet's own to the allowance. */
export interface WiredEdge {
  kind: "wired";
  wire: number;
  thickness: boolean;
}

/** Turned out; `slits` is their pitch along the edge, 0 where it is not slit. */
export interface FlangeEdge {
  kind: "flange";
  width: number;
  slits: number;
}

/** A plate that closes a flat end: made to the pipe's outside, mean or inside diameter, less `gap` all round. */
export interface PlateChoice {
  fit: "outside" | "mean" | "inside";
  gap: number;
}
