// A cubic as circular arcs. Method: biarcs, two arcs with one tangent where they meet, through both ends of a stretch with the
// curve's own tangents there (Bolton 1975; the formula is elementary); the stretch is halved until the arcs keep to it.

import { type Arc, type Cubic, type Line, type Segment, arcSweep, segmentPoint } from "./segment";
import { segmentTangent } from "./segmentTangent";
import { type Vec2, distance } from "./vector";

/** Places of a stretch at which its distance from the arcs is measured, and what is added for the places between them. */
const PROBES = 24;
const BETWEEN = 1.05;

/** Halvings; a cubic of a metre in stretches of a thousandth of a millimetre. */
const DEPTH = 20;

/** An arc that stands off its chord by less than this, mm, is a line. */
const FLAT = 1e-7;

/**
 * The segment as lines and arcs, each beginning exactly where the one before ends, within `tolerance` mm (> 0) of it as measured at 24
 * places of every stretch; lines and arcs stay as they are.
 * @throws RangeError for a tolerance that is not above 0.
 */
export function arcsOf(segment: Segment, tolerance: number): (Line | Arc)[] {
  if (!(tolerance > 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in (0, ∞)`);
  return segment.kind === "cubic" ? stretch(segment, 0, 1, tolerance, 0) : [segment];
}

function stretch(cubic: Cubic, u0: number, u1: number, tolerance: number, depth: number): (Line | Arc)[] {
  const arcs = biarc(segmentPoint(cubic, u0), segmentTangent(cubic, u0), segmentPoint(cubic, u1), segmentTangent(cubic, u1));
  if (depth === DEPTH || (arcs && BETWEEN * farthest(cubic, u0, u1, arcs) <= tolerance)) {
    return arcs ?? [{ kind: "line", from: segmentPoint(cubic, u0), to: segmentPoint(cubic, u1) }];
  }
  const middle = (u0 + u1) / 2;
  return [...stretch(cubic, u0, middle, tolerance, depth + 1), ...stretch(cubic, middle, u1, tolerance, depth + 1)];
}

/** Two arcs from `a` along `t` to `b` along `s` with equal handles; null where there are none. */
function biarc(a: Vec2, t: Vec2, b: Vec2, s: Vec2): (Line | Arc)[] | null {
  const chord = { x: b.x - a.x, y: b.y - a.y };
  const turned = 2 * (1 - dot(t, s));
  const ahead = dot(chord, { x: t.x + s.x, y: t.y + s.y });
  const square = dot(chord, chord);
  const handle = turned < 1e-12 ? square / (2 * ahead) : (-ahead + Math.sqrt(ahead * ahead + turned * square)) / turned;
  if (!(handle > 0 && Number.isFinite(handle))) return null;
  const joint = { x: (a.x + b.x + handle * (t.x - s.x)) / 2, y: (a.y + b.y + handle * (t.y - s.y)) / 2 };
  const second = arcAlong(b, { x: -s.x, y: -s.y }, joint);
  return [arcAlong(a, t, joint), second.kind === "arc" ? { ...second, from: joint, to: b, anticlockwise: !second.anticlockwise } : { kind: "line", from: joint, to: b }];
}

/** The arc from `from`, where it runs along the unit vector `along`, to `to`. */
function arcAlong(from: Vec2, along: Vec2, to: Vec2): Line | Arc {
  const chord = { x: to.x - from.x, y: to.y - from.y };
  const off = along.x * chord.y - along.y * chord.x;
  const square = dot(chord, chord);
  if (Math.abs(off) / 4 < FLAT) return { kind: "line", from, to };
  const radius = square / (2 * off);
  return { kind: "arc", from, to, centre: { x: from.x - radius * along.y, y: from.y + radius * along.x }, anticlockwise: off > 0 };
}

/** The greatest measured distance, mm, of the cubic's stretch from two segments that follow it. */
function farthest(cubic: Cubic, u0: number, u1: number, arcs: readonly (Line | Arc)[]): number {
  let most = 0;
  for (let i = 1; i < PROBES; i++) {
    const point = segmentPoint(cubic, u0 + ((u1 - u0) * i) / PROBES);
    most = Math.max(most, Math.min(...arcs.map((arc) => away(point, arc))));
  }
  return most;
}

function away(point: Vec2, segment: Line | Arc): number {
  const { from, to } = segment;
  const ends = Math.min(distance(point, from), distance(point, to));
  if (segment.kind === "line") {
    const along = { x: to.x - from.x, y: to.y - from.y };
    const share = dot({ x: point.x - from.x, y: point.y - from.y }, along) / dot(along, along);
    return share > 0 && share < 1 ? distance(point, { x: from.x + share * along.x, y: from.y + share * along.y }) : ends;
  }
  const { sweep, radius } = arcSweep(segment);
  const reached = arcSweep({ ...segment, to: point }).sweep;
  return Math.abs(reached) <= Math.abs(sweep) ? Math.abs(distance(point, segment.centre) - radius) : ends;
}

function dot(a: Vec2, b: Vec2): number {
  return a.x * b.x + a.y * b.y;
}
