// How much is added where, and what that is made of.
// Single hem W, double hem 2W, wired edge 2½ × wire diameter: NAVEDTRA 14251, chapter 2. Grooved seam 3W in all:
// M. Spencer, "Lock seam" notes. The sheet's own thickness on a wired edge: common practice.

import type { EdgeFinish, FabricationChoices, SeamJoint } from "../job/fabricationChoices";
import type { AllowancePlace } from "./place";

/** One term of a sum: factor × size (mm). */
export interface AllowancePart {
  readonly factor: number;
  readonly size: number;
  readonly what: "width" | "wire" | "thickness";
}

export interface Allowance {
  readonly place: AllowancePlace;
  readonly kind: "lap" | "grooved" | "hem" | "double-hem" | "wired" | "flange";
  /** mm added beyond the net edge: the sum of the parts. */
  readonly width: number;
  readonly parts: readonly AllowancePart[];
}

/** The allowances asked for on sheet of `thickness` mm, none of no width. */
export function allowancesOf({ seam, edges }: Pick<FabricationChoices, "seam" | "edges">, thickness: number): Allowance[] {
  const ends = (["top", "bottom"] as const).flatMap((place) => edgeAllowance(place, edges[place], thickness));
  return [...seamAllowances(seam), ...ends].filter(({ width }) => width > 0);
}

/** The width of a wired edge: 2½ times the wire's diameter (mm), and the thickness where it is asked for. */
export function wiredParts(wire: number, thickness: number | null): AllowancePart[] {
  const wrapped: AllowancePart = { factor: 2.5, size: wire, what: "wire" };
  return thickness === null ? [wrapped] : [wrapped, { factor: 1, size: thickness, what: "thickness" }];
}

function seamAllowances(seam: SeamJoint): Allowance[] {
  if (seam.kind === "butt") return [];
  const { kind, width, share } = seam;
  const factor = kind === "grooved" ? 3 : 1;
  return [
    allowance("seam-start", kind, [{ factor: factor * share, size: width, what: "width" }]),
    allowance("seam-end", kind, [{ factor: factor * (1 - share), size: width, what: "width" }]),
  ];
}

function edgeAllowance(place: "top" | "bottom", finish: EdgeFinish, thickness: number): Allowance[] {
  if (finish.kind === "none") return [];
  if (finish.kind === "wired") return [allowance(place, "wired", wiredParts(finish.wire, finish.thickness ? thickness : null))];
  const factor = finish.kind === "double-hem" ? 2 : 1;
  return [allowance(place, finish.kind, [{ factor, size: finish.width, what: "width" }])];
}

function allowance(place: AllowancePlace, kind: Allowance["kind"], parts: readonly AllowancePart[]): Allowance {
  return { place, kind, parts, width: parts.reduce((sum, { factor, size }) => sum + factor * size, 0) };
}
