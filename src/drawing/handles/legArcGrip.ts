// The middle of an arc given by its radius: how far it stands off the chord tells radius, turning and way round.

import { LIMITS, type Leg, type RadiusLeg, type Vec2 } from "../../core/index";
import { type Fit, type SizeGrip, type Values, within } from "./grip";
import { legTangents } from "./legTangents";

/** Flattest arc that a drag makes, in chords. */
const FLATTEST = 50;

/** `before` begins at `start`; it and `after` are the neighbouring legs, to which the arc may be tangent. */
export function legArcGrip(leg: RadiusLeg, from: Vec2, n: number, before: Leg | undefined, start: Vec2 | undefined, after: Leg | undefined): SizeGrip {
  const to: Vec2 = { x: leg.to.x, y: leg.to.z };
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const along: Vec2 = { x: (to.x - from.x) / chord, y: (to.y - from.y) / chord };
  const left: Vec2 = { x: -along.y, y: along.x };
  const middle: Vec2 = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const path = `profile.legs.${n}`;
  const offChord = ({ x, y }: Vec2) => (x - middle.x) * left.x + (y - middle.y) * left.y;
  const pointFor = (value: number): Vec2 => {
    const inner = Math.sqrt(Math.max(0, value * value - (chord * chord) / 4));
    const off = (leg.turn === "left" ? -1 : 1) * (leg.long ? value + inner : value - inner);
    return { x: middle.x + off * left.x, y: middle.y + off * left.y };
  };
  const put = (value: number, point?: Vec2): Values => {
    const radius = { [`${path}.radius`]: Math.max(value, chord / 2) };
    if (!point) return radius;
    const off = offChord(point);
    return { ...radius, [`${path}.turn`]: off > 0 ? "right" : "left", [`${path}.long`]: Math.abs(off) > chord / 2 };
  };
  const fits = [
    tangentFit(start && before && legTangents(start, before)?.arriving, along, chord, path, 1),
    tangentFit(after && legTangents(to, after)?.leaving, along, chord, path, -1),
  ];
  return {
    kind: "size", name: `radius-${n + 1}`, field: `${path}.radius`, quantity: "length", value: leg.radius, point: pointFor(leg.radius), pointFor, put,
    valueAt: (point) => {
      const off = Math.abs(offChord(point));
      return within(((chord * chord) / 4 + off * off) / (2 * off), chord / 2, Math.min(FLATTEST * chord, LIMITS.radius.max));
    },
    fits: fits.filter((fit) => fit !== null),
  };
}

/** The arc over the chord that runs along `tangent` at its first end (`end` 1) or its last (-1); null when that is straight on. */
function tangentFit(tangent: Vec2 | undefined | null, along: Vec2, chord: number, path: string, end: 1 | -1): Fit | null {
  if (!tangent) return null;
  const sine = along.x * tangent.y - along.y * tangent.x;
  const cosine = along.x * tangent.x + along.y * tangent.y;
  if (Math.abs(sine) < chord / (2 * LIMITS.radius.max)) return null;
  const value = chord / (2 * Math.abs(sine));
  const turn = end * sine < 0 ? "left" : "right";
  return { value, why: "tangent", values: { [`${path}.radius`]: value, [`${path}.turn`]: turn, [`${path}.long`]: cosine < 0 } };
}
