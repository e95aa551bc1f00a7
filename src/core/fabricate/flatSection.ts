// The true shape of the section where a plane closes a pipe. An oblique section of a round pipe is an ellipse of semi-axes r / cos b
// and r (elementary); where the cut runs out, its sides are straight.

import { ANGLE_NOISE } from "../numeric/tolerance";
import { TURN } from "../numeric/angle";
import { fitCubics } from "../geometry/fit";
import type { Segment } from "../geometry/segment";
import { type Vec2, unit } from "../geometry/vector";
import type { PlaneCutter } from "../cut/cutter";

/** A stretch of the edge of a section, in radians, θ growing. */
export interface Turned {
  readonly from: number;
  readonly to: number;
}

export interface FlatSection {
  /** Closed, anticlockwise; it begins in the middle of a smooth stretch. */
  readonly segments: readonly Segment[];
  readonly shape: "disc" | "ellipse" | "shaped";
}

/**
 * The section along the stretches of its edge, on the surface of the cutter's radius, within `tolerance` mm; those less than `speck` radians
 * apart are one. Where a profile swept along `sight` (a direction) takes the middle out, each side is a section of its own.
 */
export function flatSections(cutter: PlaneCutter, turns: readonly Turned[], sight: number | null, speck: number, tolerance: number): FlatSection[] {
  const stretches = joinedTurns(turns, speck);
  const whole = stretches.length === 1 && stretches.every(({ from, to }) => to - from >= TURN - ANGLE_NOISE);
  if (whole) return [{ segments: wholeSection(cutter, tolerance), shape: cutter.slope === 0 ? "disc" : "ellipse" }];
  const isSide = ({ from, to }: Turned) => sight !== null && Math.abs(Math.sin(from - sight) - Math.sin(to - sight)) <= 2 * speck;
  const apart = stretches.every(isSide) ? stretches.map((one) => [one]) : [stretches];
  return apart.map((some) => ({ segments: openSection(cutter, some, tolerance), shape: "shaped" }));
}

/** Stretches once round, those less than `speck` radians apart made one; a whole turn is one stretch. */
function joinedTurns(turns: readonly Turned[], speck: number): Turned[] {
  const joined: Turned[] = [];
  for (const turn of [...turns].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && turn.from - last.to <= speck) joined[joined.length - 1] = { from: last.from, to: turn.to };
    else joined.push(turn);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (!first || !last || first.from + TURN - last.to > speck) return joined;
  // Round the place where the turn begins; of one stretch only, the whole turn.
  return first === last ? [{ from: first.from, to: first.from + TURN }] : [{ from: last.from - TURN, to: first.to }, ...joined.slice(1, -1)];
}

function wholeSection(cutter: PlaneCutter, tolerance: number): Segment[] {
  const { direction } = cutter;
  return [...arcOf(cutter, { from: direction, to: direction + Math.PI }, tolerance), ...arcOf(cutter, { from: direction + Math.PI, to: direction + TURN }, tolerance)];
}

/** Arcs of the section with straight lines between, from the middle of the last line. */
function openSection(cutter: PlaneCutter, turns: readonly Turned[], tolerance: number): Segment[] {
  const arcs = turns.map((turn) => arcOf(cutter, turn, tolerance));
  const [begin, end] = [arcs[0]?.[0]?.from, arcs.at(-1)?.at(-1)?.to];
  if (!begin || !end) return [];
  const middle = { x: (begin.x + end.x) / 2, y: (begin.y + end.y) / 2 };
  const between = arcs.flatMap((arc, i): Segment[] => {
    const [to, from] = [arcs[i + 1]?.[0]?.from, arc.at(-1)?.to];
    return from && to ? [...arc, { kind: "line", from, to }] : arc;
  });
  return [{ kind: "line", from: middle, to: begin }, ...between, { kind: "line", from: end, to: middle }];
}

function arcOf({ direction, slope, radius }: PlaneCutter, { from, to }: Turned, tolerance: number): Segment[] {
  const stretch = Math.sqrt(1 + slope * slope);
  const at = (theta: number): Vec2 => ({ x: -radius * Math.sin(theta - direction), y: radius * stretch * Math.cos(theta - direction) });
  if (slope === 0) return [{ kind: "arc", from: at(from), to: at(to), centre: { x: 0, y: 0 }, anticlockwise: true }];
  const theta = (u: number) => from + u * (to - from);
  return fitCubics({ point: (u) => at(theta(u)), tangent: (u) => unit(-Math.cos(theta(u) - direction), -stretch * Math.sin(theta(u) - direction)) }, tolerance);
}
