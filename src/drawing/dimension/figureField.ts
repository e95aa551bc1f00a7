// Which field of the job does a figure on the drawing state? Null for figures that follow from several.

import type { Cut, Job, OpeningCut, Owner } from "../../core/index";

/** Closer than this, mm, a figure states the value of a field. */
const SAME = 1e-6;

/** The field of a height at an end: that of the pipe's length, or of the cut that made the edge, when just one field has this value. */
export function heightField(job: Job, owner: Owner, z: number): string | null {
  if (owner.kind === "top") return same(job.part.length, z) ? "length" : null;
  const cut = owner.kind === "cut" ? job.part.cuts[owner.index] : undefined;
  return cut ? onlyField(heightFields(cut), z) : null;
}

/** The field of a radius of a shaped end. */
export function radiusField(cut: Cut, radius: number): string | null {
  if (cut.kind !== "shaped") return null;
  const { profile } = cut;
  if (profile.shape === "free") {
    return onlyField(profile.legs.flatMap((leg, i) => ("radius" in leg ? [[`profile.legs.${i}.radius`, leg.radius] as const] : [])), radius);
  }
  return "radius" in profile && profile.radius !== null && same(profile.radius, radius) ? "profile.radius" : null;
}

/** The field of an opening's extent along the axis or across it, as it is turned. */
export function extentField({ outline }: OpeningCut, along: "axis" | "across"): string | null {
  if (outline.shape === "round") return "outline.diameter";
  if (outline.turn % 90 !== 0) return null;
  const upright = outline.turn % 180 === 0;
  return (along === "axis") === upright ? "outline.length" : "outline.width";
}

function heightFields(cut: Cut): (readonly [string, number])[] {
  if (cut.kind !== "shaped") return [["height", cut.height]];
  const { profile } = cut;
  switch (profile.shape) {
    case "ogee":
    case "step":
      return [["profile.low", profile.low], ["profile.high", profile.high]];
    case "free":
      return [["profile.start.z", profile.start.z], ...profile.legs.map(({ to }, i) => [`profile.legs.${i}.to.z`, to.z] as const)];
    default:
      return [["profile.height", profile.height]];
  }
}

function onlyField(fields: readonly (readonly [string, number])[], value: number): string | null {
  const stating = fields.filter(([, one]) => same(one, value));
  return stating.length === 1 ? (stating[0]?.[0] ?? null) : null;
}

function same(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME;
}
