// Which stretches of a swept profile end the pipe? In their order across it, with the length of the profile up to each.

import { TURN } from "../numeric/angle";
import type { Reach, SweepCutter } from "../cut/cutter";
import type { Turned } from "./flatSection";

/** A stretch of a reach between two places across the pipe. */
export interface ProfileStretch {
  readonly reach: Reach;
  readonly face: number;
  readonly from: number;
  readonly to: number;
  /** Length of the profile from the first stretch's beginning to that of this one, uprights between them counted; mm. */
  readonly along: number;
  /** How it rises at both ends, in radians from level. */
  readonly rise: readonly [number, number];
}

interface Across {
  readonly face: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The stretches from left to right, the pipe cut on the cutter's own radius; null where they leave a gap, or are not the same in front
 * and behind. Places within `speck` of a radian are one.
 */
export function profileStretches(cutter: SweepCutter, turns: readonly (Turned & { readonly face: number })[], speck: number): ProfileStretch[] | null {
  const near = Math.max(1e-9, speck) * cutter.radius;
  const pieces = turns.flatMap((turn) => halves(cutter, turn));
  const [front, back] = [true, false].map((facing) => joined(pieces.filter((one) => one.facing === facing).map((one) => one.across).filter(({ from, to }) => to - from > near), near));
  if (!front || !back || front.length === 0 || front.length !== back.length) return null;
  if (!front.every((one, i) => alike(one, back[i], near))) return null;
  const stretches: ProfileStretch[] = [];
  for (const { face, from, to } of front) {
    const reach = cutter.reaches[face];
    const before = stretches.at(-1);
    if (!reach || (before && Math.abs(before.to - from) > near)) return null;
    const up = before ? Math.abs(heightAt(reach, from) - heightAt(before.reach, before.to)) : 0;
    const along = before ? before.along + lengthTo(before, before.to) + (up > near ? up : 0) : 0;
    stretches.push({ reach, face, from: before?.to ?? from, to, along, rise: [riseAt(reach, from), riseAt(reach, to)] });
  }
  return stretches;
}

/** Length of the profile from the beginning of a stretch to the place t on it, mm. */
export function lengthTo({ reach, from }: Pick<ProfileStretch, "reach" | "from">, t: number): number {
  if (reach.kind === "line") return (t - from) * Math.hypot(1, reach.slope);
  return reach.radius * (angleAt(reach, t) - angleAt(reach, from));
}

/** The place t on an arc that has one height there: from -π/2 at its left end to π/2 at its right. */
export function angleAt(reach: Extract<Reach, { kind: "arc" }>, t: number): number {
  return Math.asin(Math.max(-1, Math.min(1, (t - reach.t) / reach.radius)));
}

function heightAt(reach: Reach, t: number): number {
  if (reach.kind === "line") return reach.z + reach.slope * t;
  return reach.z + reach.side * Math.sqrt(Math.max(0, reach.radius ** 2 - (t - reach.t) ** 2));
}

function riseAt(reach: Reach, t: number): number {
  if (reach.kind === "line") return Math.atan(reach.slope);
  return -reach.side * angleAt(reach, t);
}

/** The turn cut at the pipe's contour, each part with its places across the pipe and the side it lies on. */
function halves({ direction, radius }: SweepCutter, { from, to, face }: Turned & { readonly face: number }): { facing: boolean; across: Across }[] {
  const quarter = TURN / 4;
  const [begin, end] = [from - direction, to - direction];
  const cuts = [begin];
  for (let k = Math.ceil((begin - quarter) / (TURN / 2)); quarter + (k * TURN) / 2 < end; k++) if (quarter + (k * TURN) / 2 > begin) cuts.push(quarter + (k * TURN) / 2);
  cuts.push(end);
  return cuts.slice(1).map((b, i) => {
    const a = cuts[i] ?? b;
    const [s, t] = [radius * Math.sin(a), radius * Math.sin(b)];
    return { facing: Math.cos((a + b) / 2) > 0, across: { face, from: Math.min(s, t), to: Math.max(s, t) } };
  });
}

/** From left to right, neighbours on one face made one. */
function joined(pieces: readonly Across[], near: number): Across[] {
  const runs: Across[] = [];
  for (const one of [...pieces].sort((a, b) => a.from - b.from)) {
    const last = runs.at(-1);
    if (last && last.face === one.face && one.from - last.to <= near) runs[runs.length - 1] = { ...last, to: Math.max(last.to, one.to) };
    else runs.push(one);
  }
  return runs;
}

function alike(a: Across, b: Across | undefined, near: number): boolean {
  return b !== undefined && a.face === b.face && Math.abs(a.from - b.from) <= near && Math.abs(a.to - b.to) <= near;
}
