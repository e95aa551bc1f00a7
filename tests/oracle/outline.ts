import type { Cut, Leg, Profile } from "../../src/core/index";
import type { Outline, OutlineLeg } from "./kernel";

type Pair = readonly [number, number];
type Opening = Extract<Cut, { kind: "opening" }>;

/** Degrees to radians. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * The region a shaped end takes away, as a closed outline in the view (x right, z up), for the top end: all above the
 * profile, to `reach` beyond the pipe on each side. Drawn from the meaning of the job's fields, not from the core.
 */
export function outlineAbove(profile: Profile, radius: number, reach: number): Outline {
  const chain = chainOf(profile, radius, reach);
  const [first, end] = [chain[0]?.to ?? [0, 0], chain.at(-1)?.to ?? [0, 0]];
  // The sides of a hollow go straight up out of the pipe, those of every other shape level outwards.
  const [left, right] = profile.shape === "hollow" ? [first[0], end[0]] : [Math.min(-reach, first[0]), Math.max(reach, end[0])];
  const rest: OutlineLeg[] = [{ to: [right, end[1]] }, { to: [right, 8 * reach] }, { to: [left, 8 * reach] }, { to: [left, first[1]] }];
  const outline = [...chain, ...rest];
  return outline.filter((leg, i) => !same(leg.to, outline.at(i - 1)?.to ?? leg.to));
}

/** The profile from left to right; the first leg's `to` is its start. */
function chainOf(profile: Profile, radius: number, reach: number): OutlineLeg[] {
  switch (profile.shape) {
    case "hollow": {
      const { centre: c, radius: R, height: h } = profile;
      return [{ to: [c - R, h + R] }, { to: [c + R, h + R], via: [c, h] }];
    }
    case "nose": {
      const { centre: c, radius: R, height: h } = profile;
      return [{ to: [Math.min(-reach, c - 2 * R), h - R] }, { to: [c - R, h - R] }, { to: [c + R, h - R], via: [c, h] }];
    }
    case "ogee":
      return ogee(profile, radius);
    case "step": {
      const [left, right] = profile.rising === "right" ? [profile.low, profile.high] : [profile.high, profile.low];
      return [{ to: [-reach, left] }, { to: [profile.position, left] }, { to: [profile.position, right] }];
    }
    case "vee": {
      const rise = reach / Math.tan(radians(profile.angle) / 2);
      return [{ to: [profile.centre - reach, profile.height + rise] }, { to: [profile.centre, profile.height] }, { to: [profile.centre + reach, profile.height + rise] }];
    }
    case "free":
      return freeChain([profile.start.x, profile.start.z], profile.legs);
  }
}

function ogee({ low, high, rising, radius: given }: Extract<Profile, { shape: "ogee" }>, radius: number): OutlineLeg[] {
  const half = (high - low) / 2;
  const R = given ?? (radius * radius + half * half) / (2 * half);
  const side = rising === "right" ? 1 : -1;
  const middle: Pair = [0, low + half];
  const left: Pair = [-radius, rising === "right" ? low : high];
  const right: Pair = [radius, rising === "right" ? high : low];
  return [
    { to: left },
    { to: middle, via: minorArcMiddle(left, middle, R, side) },
    { to: right, via: minorArcMiddle(middle, right, R, -side) },
  ];
}

/** The middle of the arc under half a turn of radius R; `left` 1 turns left (the arc bulges to the right of its chord). */
function minorArcMiddle(a: Pair, b: Pair, R: number, left: number): Pair {
  const chord = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const sag = R - Math.sqrt(Math.max(0, R * R - (chord * chord) / 4));
  return bulged(a, b, left * sag);
}

/** The middle of the chord moved by `sag` to its right. */
function bulged(a: Pair, b: Pair, sag: number): Pair {
  const chord = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(a[0] + b[0]) / 2 + (sag * (b[1] - a[1])) / chord, (a[1] + b[1]) / 2 - (sag * (b[0] - a[0])) / chord];
}

function freeChain(start: Pair, legs: readonly Leg[]): OutlineLeg[] {
  const chain: OutlineLeg[] = [{ to: start }];
  let from = start;
  for (const leg of legs) {
    const to: Pair = [leg.to.x, leg.to.z];
    chain.push(freeLeg(from, to, leg));
    from = to;
  }
  return chain;
}

function freeLeg(from: Pair, to: Pair, leg: Leg): OutlineLeg {
  if ("radius" in leg) {
    const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const apothem = Math.sqrt(leg.radius * leg.radius - (chord * chord) / 4);
    const sag = leg.long ? leg.radius + apothem : leg.radius - apothem;
    return { to, via: bulged(from, to, leg.turn === "left" ? sag : -sag) };
  }
  if ("centre" in leg) {
    const centre: Pair = [leg.centre.x, leg.centre.z];
    const [a, b] = [from, to].map(([x, z]) => Math.atan2((z ?? NaN) - centre[1], (x ?? NaN) - centre[0]));
    const turn = 2 * Math.PI;
    const swept = ((((b ?? NaN) - (a ?? NaN)) * (leg.turn === "left" ? 1 : -1)) % turn + turn) % turn;
    const middle = (a ?? NaN) + ((leg.turn === "left" ? 1 : -1) * swept) / 2;
    const R = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
    return { to, via: [centre[0] + R * Math.cos(middle), centre[1] + R * Math.sin(middle)] };
  }
  return { to };
}

/** An opening's outline as seen from outside, about the pipe's axis line (x = offset) and its own height. */
export function openingOutline({ outline, offset, height }: Opening): Outline {
  if (outline.shape === "round") {
    const R = outline.diameter / 2;
    return [{ to: [offset + R, height], via: [offset, height - R] }, { to: [offset - R, height], via: [offset, height + R] }];
  }
  const turn = radians(outline.turn);
  const place = ([x, y]: Pair): Pair => [offset + x * Math.cos(turn) - y * Math.sin(turn), height + x * Math.sin(turn) + y * Math.cos(turn)];
  const [w, l] = [outline.width / 2, outline.length / 2];
  if (outline.shape === "rectangle") return [{ to: place([w, -l]) }, { to: place([w, l]) }, { to: place([-w, l]) }, { to: place([-w, -l]) }];
  if (l > w) return [{ to: place([w, l - w]) }, { to: place([-w, l - w]), via: place([0, l]) }, { to: place([-w, w - l]) }, { to: place([w, w - l]), via: place([0, -l]) }];
  return [{ to: place([w - l, l]) }, { to: place([l - w, l]) }, { to: place([l - w, -l]), via: place([-w, 0]) }, { to: place([w - l, -l]) }, { to: place([w - l, l]), via: place([w, 0]) }].slice(1);
}

function same(a: Pair, b: Pair): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
