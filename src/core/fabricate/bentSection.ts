// The plate that closes a shaped end: bent to the profile, laid flat. Its surface is swept straight across the pipe, so that it
// unrolls along the profile's own length: x = length of the profile from the pipe's axis, y = ±√(r² - t²), half the chord of the
// pipe at t (elementary).

import { fitCubics } from "../geometry/fit";
import { type Cubic, type Line, type Segment, reverseSegment } from "../geometry/segment";
import { segmentPart } from "../geometry/segmentPart";
import { type Vec2, distance, unit } from "../geometry/vector";
import type { Reach, SweepCutter } from "../cut/cutter";
import { lineBetween } from "./mark";
import { type ProfileStretch, angleAt, lengthTo, profileStretches } from "./profileStretches";
import type { Turned } from "./flatSection";

export interface BentSection {
  /** Closed, anticlockwise; it begins in the middle of a smooth stretch. */
  readonly segments: readonly Segment[];
  /** Where the profile has a corner, from edge to edge. */
  readonly folds: readonly Line[];
}

/** Directions of two stretches that differ by less than this, in radians, are one. */
const SMOOTH = 1e-6;

/** Places nearer than this, mm, are one. */
const JOINED = 1e-9;

/** What of a sweep ends the pipe: stretches of its faces, θ growing on each, and its upright edges: direction in radians, height in mm. */
export interface SweptEnd {
  readonly turns: readonly (Turned & { readonly face: number })[];
  readonly uprights: readonly { readonly theta: number; readonly height: number }[];
}

/**
 * The plate along what ends the pipe, on the surface of the cutter's radius, within `tolerance` mm; places within `speck` of a radian
 * are one. Null where it is not one run across the pipe, the same in front and behind.
 */
export function bentSection(cutter: SweepCutter, { turns, uprights }: SweptEnd, speck: number, tolerance: number): BentSection | null {
  const found = profileStretches(cutter, turns, speck);
  if (!found) return null;
  const { radius } = cutter;
  const axis = lengthAtAxis(found);
  const stretches = found.map((one) => ({ ...one, along: one.along - axis }));
  const rims = stretches.flatMap((one, i): (Line | Cubic)[] => [...upright(stretches[i - 1], one, radius), ...rim(one, radius, tolerance)]);
  const [first, last, foot, head] = [stretches[0], stretches.at(-1), rims[0]?.from, rims.at(-1)?.to];
  if (!first || !last || !foot || !head) return null;
  const riser = (t: number) => uprights.find(({ theta }) => Math.abs(cutter.radius * Math.sin(theta - cutter.direction) - t) <= 2 * speck * radius)?.height ?? 0;
  const [before, after] = [foot.y > JOINED ? riser(first.from) : 0, head.y > JOINED ? riser(last.to) : 0];
  const left = { x: foot.x - before, y: foot.y }, right = { x: head.x + after, y: head.y };
  const back = [...between(left, foot), ...rims, ...between(head, right)];
  const front = back.map(mirrored);
  const loop = [...front, ...between(below(right), right), ...back.map(reverseSegment).reverse(), ...between(left, below(left))];
  const [opening, ...rest] = loop;
  if (!opening) return null;
  const feet = [...(before > 0 && !stands(first.rise[0]) ? [foot] : []), ...(after > 0 && !stands(last.rise[1]) ? [head] : [])];
  const folds = [...stretches.flatMap((one, i) => foldsAt(stretches[i - 1], one, radius)), ...feet.map((at) => lineBetween(below(at), at))];
  return { segments: [segmentPart(opening, 0.5, 1), ...rest, segmentPart(opening, 0, 0.5)], folds };
}

/** Length of the profile up to the pipe's axis; half of it where it does not reach so far. */
function lengthAtAxis(stretches: readonly ProfileStretch[]): number {
  const over = stretches.find(({ from, to }) => from <= 0 && to >= 0);
  if (over) return over.along + lengthTo(over, 0);
  const last = stretches.at(-1);
  return last ? (last.along + lengthTo(last, last.to)) / 2 : 0;
}

/** The edge behind, from left to right: an ellipse over a line; over an arc spaced by a half cosine wave, smooth at both ends. */
function rim({ reach, from, to, along }: ProfileStretch, radius: number, tolerance: number): Cubic[] {
  if (reach.kind === "line") {
    const angle = (t: number) => Math.asin(Math.max(-1, Math.min(1, t / radius)));
    const theta = (u: number) => angle(from) + u * (angle(to) - angle(from));
    const stretch = Math.hypot(1, reach.slope);
    return fitCubics({
      point: (u) => ({ x: along + (radius * Math.sin(theta(u)) - from) * stretch, y: radius * Math.cos(theta(u)) }),
      tangent: (u) => unit(stretch * Math.cos(theta(u)), -Math.sin(theta(u))),
    }, tolerance);
  }
  const [a, b] = [angleAt(reach, from), angleAt(reach, to)];
  const phi = (u: number) => a + ((b - a) * (1 - Math.cos(Math.PI * u))) / 2;
  const place = (u: number) => (u === 0 ? from : u === 1 ? to : reach.t + reach.radius * Math.sin(phi(u)));
  return fitCubics({
    point: (u) => ({ x: along + reach.radius * (phi(u) - a), y: half(radius, place(u)) }),
    tangent: (u) => rimTangent(reach, place(u), phi(u), radius),
  }, tolerance);
}

/** dx : dy = y : -t cos φ; where the arc stands upright on the pipe's own contour both vanish, and y falls as √(r ρ) to ρ. */
function rimTangent(reach: Extract<Reach, { kind: "arc" }>, t: number, angle: number, radius: number): Vec2 {
  const [across, fall] = [half(radius, t), -t * Math.cos(angle)];
  const least = 1e-7 * radius;
  if (across < least && Math.abs(fall) < least) return unit(reach.radius, -Math.sign(t) * Math.sqrt(radius * reach.radius));
  return unit(across, fall);
}

/** The straight edge of an upright stretch of the profile between two others. */
function upright(before: ProfileStretch | undefined, { from, along }: ProfileStretch, radius: number): Line[] {
  if (!before) return [];
  const y = half(radius, from);
  return between({ x: before.along + lengthTo(before, before.to), y }, { x: along, y });
}

/** Bend lines where one stretch meets the next at a corner; two where an upright stands between them. */
function foldsAt(before: ProfileStretch | undefined, after: ProfileStretch, radius: number): Line[] {
  if (!before) return [];
  const begin = before.along + lengthTo(before, before.to), end = after.along;
  const y = half(radius, after.from);
  const places = end - begin > JOINED ? [...(stands(before.rise[1]) ? [] : [begin]), ...(stands(after.rise[0]) ? [] : [end])] : Math.abs(after.rise[0] - before.rise[1]) > SMOOTH ? [begin] : [];
  return places.map((x) => lineBetween({ x, y: -y }, { x, y }));
}

/** Whether the profile runs upright there, so that no bend leads into an upright. */
function stands(rise: number): boolean {
  return Math.PI / 2 - Math.abs(rise) < SMOOTH;
}

/** Half the chord of the pipe at t. */
function half(radius: number, t: number): number {
  return Math.sqrt(Math.max(0, (radius - t) * (radius + t)));
}

function between(from: Vec2, to: Vec2): Line[] {
  return distance(from, to) > JOINED ? [lineBetween(from, to)] : [];
}

function below({ x, y }: Vec2): Vec2 {
  return { x, y: y === 0 ? 0 : -y };
}

/** The same in front. */
function mirrored(segment: Line | Cubic): Line | Cubic {
  const ends = { from: below(segment.from), to: below(segment.to) };
  return segment.kind === "line" ? { ...segment, ...ends } : { ...segment, ...ends, c1: below(segment.c1), c2: below(segment.c2) };
}
