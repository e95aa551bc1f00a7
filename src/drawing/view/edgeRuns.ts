// Where along an edge does it pass from seen to hidden? Sampled between all places where the structure of either wall changes,
// then halved down to rounding.

import { type Edge, type Piece, edgePoint } from "../../core/index";
import { type Appearance, type Sight, appearanceOf, isNear } from "./visibility";
import type { Broadside } from "./views";

/** A stretch of an edge, by the edge's own parameter in [0, 1], that appears in one way. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly sight: Sight;
}

/** Greatest turn between samples, radians: features narrower than this between critical places are not met on a pipe. */
const STEP = Math.PI / 60;

/** The part of a stretch at which the first and last sample stand from its ends. */
const CLOSE = 1e-4;

/** A change can lie between samples only if the margin there is at most this many times what it fell by on the way. */
const REACH = 3;

/** Directions nearer than this, radians, are one; so are parameters. */
const SAME = 1e-9;

const TURN = 2 * Math.PI;

/** Directions (radians, within a turn) at which the structure of either wall may change: those of the contour, and those where edges of the piece begin or end, seen or mirrored; each once. */
export function criticalTurns(piece: Piece, view: Broadside): number[] {
  const ends = piece.trimmed.edges.flatMap(({ from, to }) => [from, to]);
  const turns = [view.facing + Math.PI / 2, view.facing - Math.PI / 2, ...ends, ...ends.map((theta) => 2 * view.facing + Math.PI - theta)];
  return apart(turns.map((theta) => theta - TURN * Math.floor(theta / TURN)));
}

/** The edge from 0 to 1 without gaps, in runs of one sight each. `turns` are the piece's in this view, `noise` in mm. */
export function edgeRuns(piece: Piece, view: Broadside, edge: Edge, turns: readonly number[], noise: number): Run[] {
  const look = (u: number): Sample => {
    const { theta, z } = edgePoint(piece, edge, u);
    return { u, ...appearanceOf(piece, view, theta, z, noise) };
  };
  const marks = edge.face === null ? heightMarks(piece, view, edge) : turnMarks(piece, edge, turns);
  const samples = withNearMisses(places(piece, view, edge, marks).map(look), look);
  const runs: Run[] = [];
  let start = 0;
  samples.forEach((next, i) => {
    const last = samples[i - 1];
    if (!last || next.sight === last.sight) return;
    const flip = flipBetween(look, last, next);
    runs.push({ from: start, to: flip, sight: last.sight });
    start = flip;
  });
  const last = samples.at(-1);
  return last ? [...runs, { from: start, to: 1, sight: last.sight }] : runs;
}

interface Sample extends Appearance {
  readonly u: number;
}

/** Where the edge comes nearest to a change between samples that agree, a sample more if the change is reached there. */
function withNearMisses(samples: readonly Sample[], look: (u: number) => Sample): Sample[] {
  return samples.flatMap((middle, i) => {
    const before = samples[i - 1], after = samples[i + 1];
    if (!before || !after || middle.sight === "covered" || before.sight !== middle.sight || after.sight !== middle.sight) return [middle];
    const fall = Math.max(before.margin, after.margin) - middle.margin;
    if (!(middle.margin <= before.margin && middle.margin <= after.margin && middle.margin <= REACH * fall)) return [middle];
    const found = nearestChange(before.u, after.u, middle.sight, look);
    if (found.sight === middle.sight) return [middle];
    return found.u < middle.u ? [found, middle] : [middle, found];
  });
}

/** The place between two parameters with the least margin, counted negative once the sight is another: narrowed down by thirds. */
function nearestChange(low: number, high: number, sight: Sight, look: (u: number) => Sample): Sample {
  for (let round = 0; round < 25; round++) {
    const a = look(low + (high - low) / 3), b = look(high - (high - low) / 3);
    if (a.sight !== sight) return a;
    if (b.sight !== sight) return b;
    if (a.margin < b.margin) high = b.u;
    else low = a.u;
  }
  return look((low + high) / 2);
}

/** Parameters near which an edge across the elements passes one of the turns. */
function turnMarks(piece: Piece, edge: Edge, turns: readonly number[]): number[] {
  const low = Math.min(edge.from, edge.to), high = Math.max(edge.from, edge.to);
  const marks: number[] = [];
  for (const turn of turns) {
    const theta = turn + TURN * Math.ceil((low - turn) / TURN);
    if (theta > low + SAME && theta < high - SAME) marks.push(parameterAt(piece, edge, theta));
  }
  return withEnds(marks);
}

/** The parameter at which the edge passes a direction between its ends: near enough to sample on either side. Most edges turn evenly, or as the angle about a circle does; others are halved down to it. */
function parameterAt(piece: Piece, edge: Edge, theta: number): number {
  const part = (theta - edge.from) / (edge.to - edge.from);
  const law = [part, Math.acos(1 - 2 * part) / Math.PI].find((u) => Math.abs(edgePoint(piece, edge, u).theta - theta) < SAME);
  if (law !== undefined) return law;
  let low = 0, high = 1;
  for (let round = 0; round < 30; round++) {
    const middle = (low + high) / 2;
    if (edgePoint(piece, edge, middle).theta < theta === edge.from < edge.to) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Parameters at which an edge along an element passes the heights of the near wall's edges. */
function heightMarks(piece: Piece, view: Broadside, edge: Edge): number[] {
  const [low, high] = edge.z;
  const mirrored = 2 * view.facing + Math.PI - edge.from;
  const marks = piece.trimmed.edges
    .filter((other) => Math.abs(Math.sin((other.from - mirrored) / 2)) < 1e-6 || Math.abs(Math.sin((other.to - mirrored) / 2)) < 1e-6)
    .flatMap((other) => other.z.map((z) => (z - low) / (high - low)))
    .filter((u) => u > 0 && u < 1);
  return withEnds(marks);
}

function withEnds(marks: readonly number[]): number[] {
  return apart([0, ...marks, 1]);
}

/** In growing order, without those that are one with the one before. */
function apart(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || value - (sorted[i - 1] ?? 0) > SAME);
}

/**
 * Sample places of each stretch between marks: close to both its ends, and in equal parts, none longer than `STEP`, within; not
 * on the near wall, where all is seen.
 */
function places(piece: Piece, view: Broadside, edge: Edge, marks: readonly number[]): number[] {
  const turn = edge.face === null ? 4 * STEP : Math.abs(edge.to - edge.from);
  return marks.slice(1).flatMap((to, i) => {
    const from = marks[i] ?? 0;
    const length = to - from;
    const near = isNear(view, edgePoint(piece, edge, from + length / 2).theta);
    const parts = near ? 0 : Math.max(1, Math.ceil((length * turn) / STEP));
    const within = Array.from({ length: parts }, (_, part) => from + (length * (part + 0.5)) / parts);
    return [from + length * CLOSE, ...within, to - length * CLOSE];
  });
}

/** The place between two samples where the sight at the first of them ends, to rounding. */
function flipBetween(look: (u: number) => Sample, first: Sample, last: Sample): number {
  let low = first.u, high = last.u;
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (look(middle).sight === first.sight) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
