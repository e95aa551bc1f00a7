import type { Leg, Profile } from "./pipeJob";

/**
 * The chain a shaped end is cut by, as steps that never turn back sideways: each covers the stretch from `left` to `right` and has one height
 * at every x between. Written from the meaning of each shape, not from the core. `up` is +1 on a top end; -1 on a bottom end, where hollow, nose and
 * vee stand on their heads and the other shapes keep their heights.
 */
export interface Step { readonly left: number; readonly right: number; readonly height: (x: number) => number }

export type ArcLeg = Extract<Leg, { turn: "left" | "right" }>;

interface Place { readonly x: number; readonly z: number }

/** All steps of the profile, with level runs added outside so that x = ±pipeRadius is never beyond the chain's ends. */
export function profileSteps(profile: Profile, up: 1 | -1, pipeRadius: number): readonly Step[] {
  const { start, legs } = asChain(profile, up, pipeRadius);
  const steps: Step[] = [];
  let from: Place = start;
  for (const leg of legs) {
    steps.push(...stepsOfLeg(from, leg));
    from = leg.to;
  }
  const reach = 10 * pipeRadius;
  const before = level({ x: start.x - reach, z: start.z }, start);
  const after = level(from, { x: from.x + reach, z: from.z });
  return [before, ...steps, after];
}

/** Any profile as a start and legs from left to right. */
export function asChain(profile: Profile, up: 1 | -1, pipeRadius: number): { start: Place; legs: readonly Leg[] } {
  const wide = 2 * pipeRadius;
  switch (profile.shape) {
    case "hollow": {
      const { centre: c, radius, height } = profile;
      const shoulder = height + up * radius;
      return { start: { x: c - radius, z: shoulder }, legs: [arc({ x: c + radius, z: shoulder }, { x: c, z: shoulder }, up === 1 ? "left" : "right")] };
    }
    case "nose": {
      const { centre: c, radius, height } = profile;
      const shoulder = height - up * radius;
      return { start: { x: c - radius, z: shoulder }, legs: [arc({ x: c + radius, z: shoulder }, { x: c, z: shoulder }, up === 1 ? "right" : "left")] };
    }
    case "vee": {
      const half = (profile.angle / 2) * (Math.PI / 180);
      const run = wide + Math.abs(profile.centre);
      const z = profile.height + (up * run) / Math.tan(half);
      return { start: { x: profile.centre - run, z }, legs: [{ to: { x: profile.centre, z: profile.height } }, { to: { x: profile.centre + run, z } }] };
    }
    case "step": {
      const [a, b] = profile.rising === "right" ? [profile.low, profile.high] : [profile.high, profile.low];
      const { position } = profile;
      return { start: { x: position - wide, z: a }, legs: [{ to: { x: position, z: a } }, { to: { x: position, z: b } }, { to: { x: position + wide, z: b } }] };
    }
    case "ogee": {
      const [a, b] = profile.rising === "right" ? [profile.low, profile.high] : [profile.high, profile.low];
      const half = (profile.high - profile.low) / 2;
      const radius = profile.radius ?? (pipeRadius ** 2 + half ** 2) / (2 * half);
      const first = profile.rising === "right" ? "left" : "right";
      const second = profile.rising === "right" ? "right" : "left";
      return {
        start: { x: -pipeRadius, z: a },
        legs: [{ to: { x: 0, z: (a + b) / 2 }, radius, turn: first, long: false }, { to: { x: pipeRadius, z: b }, radius, turn: second, long: false }],
      };
    }
    case "free":
      return { start: profile.start, legs: profile.legs };
  }
}

/** The centre of an arc leg: given, or the one of the two possible that the turn and the long or short way round ask for. */
export function arcCentre(from: Place, leg: ArcLeg): Place {
  if ("centre" in leg) return leg.centre;
  const [dx, dz] = [leg.to.x - from.x, leg.to.z - from.z];
  const chord = Math.hypot(dx, dz);
  const away = Math.sqrt(Math.max(0, leg.radius ** 2 - chord ** 2 / 4));
  const onLeft = (leg.turn === "left") !== leg.long ? 1 : -1;
  return { x: (from.x + leg.to.x) / 2 - (onLeft * away * dz) / chord, z: (from.z + leg.to.z) / 2 + (onLeft * away * dx) / chord };
}

function arc(to: Place, centre: Place, turn: "left" | "right"): Leg {
  return { to, centre, turn };
}

function level(from: Place, to: Place): Step {
  return { left: from.x, right: to.x, height: () => from.z };
}

function stepsOfLeg(from: Place, leg: Leg): Step[] {
  if (!("turn" in leg)) {
    const { to } = leg;
    if (from.x === to.x) return [];
    const [a, b] = from.x < to.x ? [from, to] : [to, from];
    return [{ left: a.x, right: b.x, height: (x) => a.z + ((b.z - a.z) * (x - a.x)) / (b.x - a.x) }];
  }
  return stepsOfArc(from, leg.to, arcCentre(from, leg), leg.turn);
}

/** The arc cut at its leftmost and rightmost points: on each part it runs along the upper or the lower half of its circle. */
function stepsOfArc(from: Place, to: Place, centre: Place, turn: "left" | "right"): Step[] {
  const radius = Math.hypot(from.x - centre.x, from.z - centre.z);
  const way = turn === "left" ? 1 : -1;
  const begin = Math.atan2(from.z - centre.z, from.x - centre.x);
  let sweep = (Math.atan2(to.z - centre.z, to.x - centre.x) - begin) * way;
  while (sweep <= 1e-12) sweep += 2 * Math.PI;
  const stops = [0];
  for (let quarter = -4; quarter <= 4; quarter += 1) {
    const along = (quarter * Math.PI - begin) * way;
    if (along > 1e-12 && along < sweep - 1e-12) stops.push(along);
  }
  stops.sort((a, b) => a - b);
  stops.push(sweep);
  const places = stops.map((along, index) => {
    if (index === 0) return from.x;
    if (index === stops.length - 1) return to.x;
    return centre.x + radius * Math.sign(Math.cos(begin + way * along));
  });
  return places.slice(1).map((x, index): Step => {
    const middle = begin + (way * (stops[index]! + stops[index + 1]!)) / 2;
    const side = Math.sign(Math.sin(middle));
    const previous = places[index]!;
    return {
      left: Math.min(previous, x), right: Math.max(previous, x),
      height: (at) => centre.z + side * Math.sqrt(Math.max(0, radius ** 2 - (at - centre.x) ** 2)),
    };
  });
}
