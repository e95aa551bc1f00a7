import type { PatternSegment, Vec2 } from "../../src/core/index";
import { expectClose } from "../support/approximate";
import { edgeLength } from "../support/edgeLength";
import type { LawCase } from "../support/lawCase";
import { distanceTo, isInside, loopArea, segmentLength, segmentNormal, segmentPoint } from "../support/loopSampling";
import { isKept } from "../support/pointMembership";
import { randomSource, type RandomSource } from "../support/randomSource";
import { integrateTurn } from "../support/surfaceArea";

/** Within which the pattern's edge follows the true edge unless asked otherwise, in mm. */
const FOLLOWS = 0.005;

/** The same, with room for the places where it is looked for, in mm. */
const NEAR = 1.1 * FOLLOWS;

/** How far beside an edge its sides are looked at, in mm. */
const BESIDE = 0.02;

/** Direction on the pipe of a place `x` along the girth of the pattern. */
export function directionAt({ piece, job }: LawCase, x: number): number {
  return piece.pattern.seam + ((job.development.face === "outside" ? 1 : -1) * x) / piece.form.radius;
}

/** The kept area on the surface is that of the slow quadrature of kept elements, to 1e-6 of the whole pipe's. */
export function checkSurfaceArea({ piece, elements }: LawCase): void {
  const whole = 2 * Math.PI * elements.radius * elements.length;
  const slow = elements.radius * integrateTurn(elements.lengthAt, 1e-6 * elements.length);
  expectClose(piece.trimmed.area, slow, 1e-6 * whole, "area");
  expectClose(piece.pattern.proof.areaSurface, slow, 1e-6 * whole, "area in the proof");
}

/** The flat area is the surface's but for what an edge within 0.005 mm can take or give. */
export function checkFlatArea({ piece }: LawCase): void {
  const { loops, proof } = piece.pattern;
  const around = loops.flatMap((loop) => loop.segments).reduce((sum, segment) => sum + segmentLength(segment), 0);
  const measured = loops.reduce((sum, loop) => sum + loopArea(loop), 0);
  expectClose(measured, piece.trimmed.area, FOLLOWS * around, "flat area");
  expectClose(proof.areaFlat, measured, 1e-6 * piece.pattern.girth * (loops.length + 10), "flat area in the proof");
}

/** The edges are as long on the pattern as in space, to 1e-4 of their length and 0.02 mm; the seam is left out on both sides. */
export function checkEdgeLength({ piece }: LawCase): void {
  const { loops, proof } = piece.pattern;
  const flat = loops.flatMap((loop) => loop.segments).filter((segment) => segment.owner.kind !== "seam").reduce((sum, segment) => sum + segmentLength(segment), 0);
  expectClose(proof.edgeLengthFlat, flat, 1e-6 * flat, "flat edge length in the proof");
  expectClose(proof.edgeLengthFlat, proof.edgeLengthSurface, 1e-4 * flat + 0.02, "edge length");
}

/** The length in space that the proof states is that of many chords between points of the edges, to 1e-5 of it. */
export function checkLengthInSpace({ piece }: LawCase): void {
  const chords = edgeLength(piece, (owner) => owner.kind !== "seam", 1000);
  expectClose(piece.pattern.proof.edgeLengthSurface, chords, 1e-5 * chords, "edge length in space");
}

/**
 * Each place on the pattern's edge, rolled back, lies within 0.005 mm of the true edge: a ring of that radius about it, one tenth wider for being
 * looked at in single directions only, meets both kept and removed surface, or some element ends inside it.
 */
export function checkRollBack(one: LawCase): void {
  for (const segment of one.piece.pattern.loops.flatMap((loop) => loop.segments)) {
    if (segment.owner.kind === "seam") continue;
    for (const u of [0.02, 0.21, 0.5, 0.68, 0.93]) {
      const place = segmentPoint(segment, u);
      if (!isBetween(one, place, 32) && !isByEnd(one, place) && !isBetween(one, place, 4000)) throw new Error(`the edge of ${segment.owner.kind} at ${place.x}, ${place.y} is not near a true edge`);
    }
  }
}

/**
 * Just left of travel the surface is kept and just right of it removed, on every segment of 0.08 mm or more, wherever no other edge is near. A place counts as either
 * where its neighbours 0.0001 mm away differ (an element that an edge runs along has no one answer); more than three wrong places of six are needed, for where an edge all but
 * touches another one side of it may be wrong all along.
 */
export function checkSides(one: LawCase): void {
  for (const segment of one.piece.pattern.loops.flatMap((loop) => loop.segments)) {
    if (segment.owner.kind === "seam" || segmentLength(segment) < 4 * BESIDE) continue;
    const wrong = [0.11, 0.5, 0.83].flatMap((u) => [1, -1].map((side) => ({ u, side }))).filter(({ u, side }) => isWrongSide(one, segment, u, side));
    if (wrong.length > 3) throw new Error(`the edge of ${segment.owner.kind} from ${segment.from.x}, ${segment.from.y} has its material on the wrong side`);
  }
}

function isWrongSide(one: LawCase, segment: PatternSegment, u: number, side: number): boolean {
  const [place, normal] = [segmentPoint(segment, u), segmentNormal(segment, u)];
  const beside = { x: place.x + side * BESIDE * normal.x, y: place.y + side * BESIDE * normal.y };
  const here = [0, -1e-4, 1e-4].map((across) => isOnWall(one, { x: beside.x + across, y: beside.y }));
  return !here.includes(side === 1) && distanceTo(one.runs(), beside) >= 0.9 * BESIDE;
}

/** Every true end of 16 elements lies within 0.005 mm of the pattern's edge: no edge is missing. */
export function checkNothingMissing(one: LawCase): void {
  const source = randomSource(11);
  for (let trial = 0; trial < 16; trial += 1) {
    const x = source.between(0, one.piece.pattern.girth);
    for (const y of one.elements.at(directionAt(one, x)).flatMap(({ from, to }) => [from, to])) {
      const gap = distanceTo(one.runs(), { x, y });
      if (!(gap <= NEAR)) throw new Error(`the true edge at ${x}, ${y} is ${gap} mm from the pattern's`);
    }
  }
}

/** Random places of the blank lie inside the loops exactly where the surface is kept, but for the last 0.01 mm by an edge. */
export function checkPlaces(one: LawCase): void {
  const source = randomSource(12);
  for (let trial = 0; trial < 30; trial += 1) {
    const place = randomPlace(source, one);
    const kept = isKept(one.job, directionAt(one, place.x), place.y);
    if (isInside(one.runs(), place) === kept || distanceTo(one.runs(), place) < 0.01) continue;
    throw new Error(`${place.x}, ${place.y} is ${kept ? "kept but outside" : "removed but inside"} the loops`);
  }
}

function randomPlace(source: RandomSource, { piece, elements }: LawCase): Vec2 {
  return { x: source.between(0, piece.pattern.girth), y: source.between(0, elements.length) };
}

/** True where the place lies in a kept reach of its element. */
function isOnWall(one: LawCase, { x, y }: Vec2): boolean {
  return one.elements.at(directionAt(one, x)).some(({ from, to }) => y > from && y < to);
}

/** True where both kept and removed surface is found in so many directions from the place (sharp corners need many). */
function isBetween(one: LawCase, { x, y }: Vec2, directions: number): boolean {
  let kept = 0;
  for (let index = 0; index < directions; index += 1) {
    const angle = (index * 2 * Math.PI) / directions;
    kept += isOnWall(one, { x: x + NEAR * Math.cos(angle), y: y + NEAR * Math.sin(angle) }) ? 1 : 0;
    if (kept > 0 && kept <= index) return true;
  }
  return false;
}

/** True where one of 41 elements about the place ends near it (where edges touch, what lies between them may be too thin for any direction). */
function isByEnd(one: LawCase, { x, y }: Vec2): boolean {
  return Array.from({ length: 41 }, (_, index) => ((index - 20) / 20) * NEAR).some((across) =>
    one.elements.at(directionAt(one, x + across)).some(({ from, to }) => Math.min(Math.hypot(across, from - y), Math.hypot(across, to - y)) <= NEAR),
  );
}
