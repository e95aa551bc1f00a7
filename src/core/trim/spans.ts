// Which stretches of each element are kept, and where along the girth does that answer change its structure?
// All places where it can change are computed first (corners, upright tangents, meetings of faces); between two of
// them the same faces bound the same stretches, so one element in the middle tells them all.

import { TURN, angleBetween, wrapTurn } from "../numeric/angle";
import { distinctAngles } from "../numeric/distinctAngles";
import { ANGLE_NOISE, NOISE, ROOT_NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter, FaceRef } from "../cut/cutter";
import { heightOn } from "../cut/heightOn";
import { type Face, cornerAngles, facesOf, meetingAngles } from "../cut/meetingAngles";
import { type RemovedStretch, removedStretches } from "../cut/removedStretches";

/** A kept stretch by the faces that bound it, lower and upper. */
export interface BoundedStretch {
  readonly fromFace: FaceRef;
  readonly toFace: FaceRef;
}

/** Over θ in [from, to] the same stretches are kept, from low to high. from < to ≤ from + 2π. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly stretches: readonly BoundedStretch[];
}

/** The spans of a pipe once round, ascending, the first beginning at `start` (radians, brought into [0, 2π)). */
export function spansOf(pipe: Pipe, cutters: readonly Cutter[], start: number): Span[] {
  const begin = wrapTurn(start);
  const places = changePlaces(pipe, cutters, begin).map((place) => (place < begin ? place + TURN : place)).sort((a, b) => a - b);
  return places.map((from, k) => {
    const to = places[k + 1] ?? begin + TURN;
    return { from, to, stretches: boundedStretches(pipe, cutters, from, to) };
  });
}

/** All places where the structure may change, exact ones listed first, so that they stay where another falls on them. */
function changePlaces(pipe: Pipe, cutters: readonly Cutter[], begin: number): number[] {
  const size = pipeSize(pipe);
  const angles: number[] = [];
  for (const cutter of cutters) angles.push(...cornerAngles(cutter, size));
  const faces = cutters.map(facesOf);
  faces.forEach((own, i) => {
    for (let j = 0; j < i; j++) angles.push(...meetings(own, faces[j] ?? [], size));
  });
  const contours = cutters.flatMap(contourAngles);
  return distinctAngles([begin, ...angles.map((angle) => gathered(angle, contours))], ANGLE_NOISE);
}

/** The two elements outermost as seen along a sweep: there the place across turns, and equal roots fall together. */
function contourAngles(cutter: Cutter): number[] {
  return cutter.kind === "sweep" ? [wrapTurn(cutter.direction + Math.PI / 2), wrapTurn(cutter.direction - Math.PI / 2)] : [];
}

/** Roots that fall together on a contour element scatter by the root of the rounding: they are that element. */
function gathered(angle: number, contours: readonly number[]): number {
  return contours.find((contour) => angleBetween(angle, contour) < ROOT_NOISE) ?? angle;
}

function meetings(own: readonly Face[], other: readonly Face[], size: number): number[] {
  return own.flatMap((a) => other.flatMap((b) => meetingAngles(a, b, size)));
}

/** The stretches on the middle element, but for hairs: those thinner than ROOT_NOISE of the pipe's size all along. */
function boundedStretches(pipe: Pipe, cutters: readonly Cutter[], from: number, to: number): BoundedStretch[] {
  const size = pipeSize(pipe);
  const middle = from + (to - from) / 2;
  const removed = cutters.flatMap((cutter, index) => removedStretches(cutter, index, middle));
  const thickness = ({ fromFace, toFace }: BoundedStretch, theta: number) => heightOn(cutters, toFace, theta) - heightOn(cutters, fromFace, theta);
  return keptBetween(removed, NOISE * size)
    .map(({ fromFace, toFace }) => ({ fromFace, toFace }))
    .filter((stretch) => [middle, from, to].some((theta) => thickness(stretch, theta) > ROOT_NOISE * size));
}

/** What is left of an element between removed stretches; remainders thinner than `noise` (mm) are nothing. */
function keptBetween(removed: readonly RemovedStretch[], noise: number): BoundedStretch[] {
  const sorted = [...removed].sort((a, b) => (a.from === b.from ? 0 : a.from - b.from));
  const kept: BoundedStretch[] = [];
  let reached = -Infinity;
  let face: FaceRef | null = null;
  for (const stretch of sorted) {
    if (stretch.from > reached + noise && face && stretch.fromFace) kept.push({ fromFace: face, toFace: stretch.fromFace });
    if (stretch.to > reached) {
      reached = stretch.to;
      face = stretch.toFace;
    }
  }
  return kept;
}
