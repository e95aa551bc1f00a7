// The profile of a shaped end as a chain of lines and arcs from left to right, in the view it is described in:
// x to the right, y up along the axis. Shapes are described for a top end; hollow, nose and vee of a bottom end are
// their mirror images.

import { type ChainSegment, arcByRadius, linesThrough, mirroredInBase } from "../geometry/chain";
import { type Arc, reverseSegment } from "../geometry/segment";
import { type Vec2, distance } from "../geometry/vector";
import type { Pipe } from "../form/pipe";
import type { End, FreeProfile, HollowProfile, Leg, NoseProfile, OgeeProfile, Profile, StepProfile, VeeProfile } from "../job/job";
import type { Problem } from "../job/problem";

/** sides: how the profile goes on beyond its two ends, level outwards or upright out of the pipe. */
export type EndChain =
  | { readonly ok: true; readonly chain: ChainSegment[]; readonly sides: "level" | "upright" }
  | { readonly ok: false; readonly problem: Problem };

/** Ends of an arc may miss its centre's circle by this share of the radius. */
const CENTRE_NOISE = 1e-6;

/**
 * The chain of a profile, ending at or beyond both contour elements of the surface on which the cut is found; the sides of a vee run
 * on to those of the outside. `field` is the path of the profile in the job, for the problem.
 */
export function endChain(profile: Profile, end: End, { cutRadius: radius, outside }: Pick<Pipe, "cutRadius" | "outside">, field: string): EndChain {
  const upright = end === "top";
  const height = (value: number) => (upright ? value : -value);
  const turned = (chain: ChainSegment[], sides: "level" | "upright"): EndChain =>
    ({ ok: true, chain: upright ? chain : mirroredInBase(chain), sides });
  switch (profile.shape) {
    case "hollow": return turned(hollowChain({ ...profile, height: height(profile.height) }), "upright");
    case "nose": return turned(noseChain({ ...profile, height: height(profile.height) }), "level");
    case "vee": return turned(veeChain({ ...profile, height: height(profile.height) }, outside / 2), "level");
    case "step": return level(stepChain(profile, radius));
    case "ogee": return ogeeChain(profile, radius, field);
    case "free": return freeChain(profile, radius, field);
  }
}

function level(chain: ChainSegment[]): EndChain {
  return { ok: true, chain, sides: "level" };
}

/** An arc with its deepest point at `height`; the sides of a narrow one go straight up. */
function hollowChain({ radius, centre, height }: HollowProfile): ChainSegment[] {
  const left = { x: centre - radius, y: height + radius };
  const right = { x: centre + radius, y: height + radius };
  return [halfCircle(left, right, { x: centre, y: height + radius }, true)];
}

/** An arc with its crown at `height`, and level shoulders at the height of its centre. */
function noseChain({ radius, centre, height }: NoseProfile): ChainSegment[] {
  const y = height - radius;
  return [halfCircle({ x: centre - radius, y }, { x: centre + radius, y }, { x: centre, y }, false)];
}

function halfCircle(from: Vec2, to: Vec2, centre: Vec2, anticlockwise: boolean): Arc {
  return { kind: "arc", from, to, centre, anticlockwise };
}

function veeChain({ angle, centre, height }: VeeProfile, radius: number): ChainSegment[] {
  const reach = (radius + Math.abs(centre)) * 1.1;
  const rise = reach / Math.tan((angle * Math.PI) / 360);
  return linesThrough([{ x: centre - reach, y: height + rise }, { x: centre, y: height }, { x: centre + reach, y: height + rise }]);
}

function stepChain({ low, high, rising, position }: StepProfile, radius: number): ChainSegment[] {
  const reach = (radius + Math.abs(position)) * 1.1;
  const [left, right] = rising === "right" ? [low, high] : [high, low];
  return linesThrough([{ x: -reach, y: left }, { x: position, y: left }, { x: position, y: right }, { x: reach, y: right }]);
}

/** Two equal arcs from contour to contour, tangent half-way: hollow at the low end, round at the high one. */
function ogeeChain({ low, high, rising, radius: given }: OgeeProfile, radius: number, field: string): EndChain {
  const chord = Math.hypot(2 * radius, high - low);
  // Level ends: each arc turns from level through the angle of the half chord twice over: ρ = chord² / (4 rise).
  const arcRadius = given ?? (chord * chord) / (4 * (high - low));
  if (arcRadius < (chord / 4) * (1 - 1e-9)) {
    return { ok: false, problem: { code: "arc-too-small", field: `${field}.radius`, value: arcRadius, min: chord / 4 } };
  }
  const middle = { x: 0, y: (low + high) / 2 };
  const lowEnd = { x: rising === "right" ? -radius : radius, y: low };
  const highEnd = { x: -lowEnd.x, y: high };
  const [first, second]: [Vec2, Vec2] = rising === "right" ? [lowEnd, highEnd] : [highEnd, lowEnd];
  const [leaving, arriving] = rising === "right" ? (["left", "right"] as const) : (["right", "left"] as const);
  return level([arcByRadius(first, middle, arcRadius, leaving, false), arcByRadius(middle, second, arcRadius, arriving, false)]);
}

/** The maker's own chain; it may be given from right to left. */
function freeChain({ start, legs }: FreeProfile, radius: number, field: string): EndChain {
  const chain: ChainSegment[] = [];
  let from: Vec2 = { x: start.x, y: start.z };
  for (const [i, leg] of legs.entries()) {
    const next = legSegment(from, leg, `${field}.legs.${i}`);
    if ("code" in next) return { ok: false, problem: next };
    chain.push(next);
    from = next.to;
  }
  const noise = radius * 1e-9;
  const leftwards = start.x > from.x;
  const [left, right] = leftwards ? [from.x, start.x] : [start.x, from.x];
  if (left > -radius + noise || right < radius - noise) {
    const problem: Problem = { code: "profile-not-across", field, min: -radius, max: radius, detail: { left, right } };
    return { ok: false, problem };
  }
  return level(leftwards ? chain.map(reverseSegment).reverse() : chain);
}

function legSegment(from: Vec2, leg: Leg, field: string): ChainSegment | Problem {
  const to: Vec2 = { x: leg.to.x, y: leg.to.z };
  const gap = distance(from, to);
  if (gap === 0) return { code: "profile-too-short", field };
  if ("radius" in leg) {
    if (leg.radius < (gap / 2) * (1 - 1e-9)) return { code: "arc-too-small", field: `${field}.radius`, value: leg.radius, min: gap / 2 };
    return arcByRadius(from, to, leg.radius, leg.turn, leg.long);
  }
  if ("centre" in leg) {
    const centre: Vec2 = { x: leg.centre.x, y: leg.centre.z };
    const [near, far] = [distance(centre, from), distance(centre, to)];
    if (!(Math.abs(near - far) <= CENTRE_NOISE * near)) {
      return { code: "arc-centre-off", field: `${field}.centre`, detail: { from: near, to: far } };
    }
    return { kind: "arc", from, to, centre, anticlockwise: leg.turn === "left" };
  }
  return { kind: "line", from, to };
}
