import type { Vec2 } from "../../src/core/index";
import { expectClose } from "../support/approximate";
import { edgeLength, isCut } from "../support/edgeLength";
import type { LawCase } from "../support/lawCase";
import { distanceTo, finePoints, isInside, loopArea, segmentLength, segmentNormal, segmentPoint } from "../support/loopSampling";
import { isKept } from "../support/pointMembership";
import { randomSource, type RandomSource } from "../support/randomSource";
import { integrateTurn } from "../support/surfaceArea";

/** Within which the pattern's edge follows the true edge unless asked otherwise, in mm. */
const FOLLOWS = 0.005;

/** Direction on the pipe of a place `x` along the girth of the pattern. */
export function directionAt({ piece, job }: LawCase, x: number): number {
  return piece.pattern.seam + ((job.development.face === "outside" ? 1 : -1) * x) / piece.form.radius;
}

/** The kept area on the surface is that of the slow quadrature of kept elements, to 1e-6 of the whole pipe's. */
export function checkSurfaceArea({ piece, elements }: LawCase): void {
  const whole = 2 * Math.PI * elements.radius * elements.length;
  const slow = elements.radius * integrateTurn(elements.lengthAt, 1e-7 * elements.length);
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

/** Cut edges are as long on the pattern as in space, to 1e-4 of their length and 0.02 mm. */
export function checkEdgeLength({ piece }: LawCase): void {
  const flat = piece.pattern.loops.flatMap((loop) => loop.segments).filter((segment) => isCut(segment.owner)).reduce((sum, segment) => sum + segmentLength(segment), 0);
  const space = edgeLength(piece, isCut, 200);
  expectClose(flat, space, 1e-4 * space + 0.02, "cut edge length");
}

/**
 * Each place on the pattern's edge, rolled back, lies within 0.005 mm of the true edge: a ring of that radius about it, one tenth wider for being
 * looked at in 32 directions only, meets both kept and removed surface.
 */
export function checkRollBack(one: LawCase): void {
  for (const segment of one.piece.pattern.loops.flatMap((loop) => loop.segments)) {
    if (segment.owner.kind === "seam") continue;
    for (const u of [0, 0.03, 0.21, 0.5, 0.68, 0.93]) {
      const place = segmentPoint(segment, u);
      const answers = new Set(ringAbout(place, 1.1 * FOLLOWS).map(({ x, y }) => isKept(one.job, directionAt(one, x), y)));
      if (answers.size < 2) throw new Error(`the edge of ${segment.owner.kind} at ${place.x}, ${place.y} is not near a true edge: all is ${answers.has(true) ? "kept" : "removed"} there`);
    }
  }
}

/** Just left of travel the surface is kept and just right of it removed, on every segment, wherever no other edge is near. */
export function checkSides(one: LawCase): void {
  const runs = one.piece.pattern.loops.map((loop) => finePoints(loop, 2e-4));
  const offset = 0.02;
  for (const segment of one.piece.pattern.loops.flatMap((loop) => loop.segments)) {
    if (segment.owner.kind === "seam" || segmentLength(segment) < 4 * offset) continue;
    for (const u of [0.11, 0.5, 0.83]) {
      const [place, normal] = [segmentPoint(segment, u), segmentNormal(segment, u)];
      for (const side of [1, -1]) {
        const beside = { x: place.x + side * offset * normal.x, y: place.y + side * offset * normal.y };
        if (distanceTo(runs, beside) < offset * 0.9) continue;
        if (isKept(one.job, directionAt(one, beside.x), beside.y) !== (side === 1)) {
          throw new Error(`${side === 1 ? "left" : "right"} of the edge of ${segment.owner.kind} at ${place.x}, ${place.y} is ${side === 1 ? "removed" : "kept"}`);
        }
      }
    }
  }
}

/** Every true end of 40 elements lies within 0.005 mm of the pattern's edge: no edge is missing. */
export function checkNothingMissing(one: LawCase, seed: number): void {
  const source = randomSource(seed);
  const runs = one.piece.pattern.loops.map((loop) => finePoints(loop, 2e-4));
  for (let trial = 0; trial < 40; trial += 1) {
    const x = source.between(0, one.piece.pattern.girth);
    for (const { from, to } of one.elements.at(directionAt(one, x))) {
      for (const y of [from, to]) {
        const gap = distanceTo(runs, { x, y });
        if (!(gap <= 1.1 * FOLLOWS)) throw new Error(`the true edge at ${x}, ${y} is ${gap} mm from the pattern's`);
      }
    }
  }
}

/** Random places of the blank lie inside the loops exactly where the surface is kept, but for the last 0.01 mm by an edge. */
export function checkPlaces(one: LawCase, seed: number): void {
  const source = randomSource(seed);
  const runs = one.piece.pattern.loops.map((loop) => finePoints(loop, 2e-4));
  for (let trial = 0; trial < 40; trial += 1) {
    const place = randomPlace(source, one);
    if (distanceTo(runs, place) < 0.01) continue;
    const kept = isKept(one.job, directionAt(one, place.x), place.y);
    if (isInside(runs, place) !== kept) throw new Error(`${place.x}, ${place.y} is ${kept ? "kept but outside" : "removed but inside"} the loops`);
  }
}

function randomPlace(source: RandomSource, { piece, elements }: LawCase): Vec2 {
  return { x: source.between(0, piece.pattern.girth), y: source.between(0, elements.length) };
}

function ringAbout({ x, y }: Vec2, radius: number): Vec2[] {
  return Array.from({ length: 32 }, (_, index) => ({ x: x + radius * Math.cos((index * Math.PI) / 16), y: y + radius * Math.sin((index * Math.PI) / 16) }));
}
