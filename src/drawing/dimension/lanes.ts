// Where do the dimensions of a view go? In lanes outside the view: short ones near it, each where neither its line nor its
// figure meets another; extension lines at one place are drawn once.

import type { Vec2 } from "../../core/index";
import type { Box } from "../box";
import { dimensionLine } from "./dimensionLine";
import type { Item, Ref } from "../display";
import { figurePlace } from "./figurePlace";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import { stroke } from "../strokes";

export type LaneSide = "left" | "right" | "above" | "below";

/** A length to be shown along x (above, below) or y (left, right) between two points of the sheet. */
export interface LinearDimension {
  readonly side: LaneSide;
  readonly from: Vec2;
  readonly to: Vec2;
  readonly text: string;
  readonly ref?: Ref;
}

interface Placed {
  readonly low: number;
  readonly high: number;
  readonly lane: number;
  readonly dimension: LinearDimension;
  /** What the line, its arrowheads and its figure take along the lane. */
  taken: readonly [number, number];
  figureAt: number;
}

/** Dimension lines, figures and extension lines around a view that takes `body`. */
export function laneDimensions(dimensions: readonly LinearDimension[], body: Box, metrics: Metrics): Item[] {
  return (["left", "right", "above", "below"] as const).flatMap((side) =>
    onSide(side, dimensions.filter((dimension) => dimension.side === side), body, metrics));
}

function onSide(side: LaneSide, dimensions: readonly LinearDimension[], body: Box, metrics: Metrics): Item[] {
  const upright = side === "left" || side === "right";
  const along = (point: Vec2) => (upright ? point.y : point.x);
  const edge = { left: body.left, right: body.right, above: body.top, below: body.bottom }[side];
  const outward = side === "right" || side === "above" ? 1 : -1;
  const across = (lane: number) => edge + outward * (metrics.first + lane * metrics.lane);
  const placed = placeInLanes(dimensions, along, metrics);
  for (const one of placed) settleFigure(one, placed, along, metrics);
  const lines = placed.flatMap(({ low, high, lane, figureAt, dimension }) => dimensionLine({
    axis: upright ? "vertical" : "horizontal", low, high, across: across(lane), figureAt, text: dimension.text, ref: dimension.ref,
  }, metrics));
  return [...extensionLines(placed, upright, across, outward, metrics), ...lines];
}

/** Shortest first, each in the first lane where it fits. */
function placeInLanes(dimensions: readonly LinearDimension[], along: (point: Vec2) => number, metrics: Metrics): Placed[] {
  const spans = dimensions.map((dimension) => {
    const a = along(dimension.from), b = along(dimension.to);
    return { dimension, low: Math.min(a, b), high: Math.max(a, b) };
  });
  const placed: Placed[] = [];
  for (const { dimension, low, high } of spans.sort((a, b) => a.high - a.low - (b.high - b.low))) {
    const { at: figureAt, taken } = figurePlace(low, high, dimension.text, metrics);
    let lane = 0;
    while (placed.some((other) => other.lane === lane && other.taken[0] < taken[1] + metrics.gap && taken[0] < other.taken[1] + metrics.gap)) lane++;
    placed.push({ dimension, low, high, lane, taken, figureAt });
  }
  return placed;
}

/** Moves a figure out of the way of extension lines that pass its lane on their way outward. */
function settleFigure(one: Placed, placed: readonly Placed[], along: (point: Vec2) => number, metrics: Metrics): void {
  const half = textWidth(one.dimension.text, metrics.lettering) / 2 + metrics.gap / 2;
  const passing = placed.filter(({ lane }) => lane > one.lane).flatMap(({ dimension }) => [along(dimension.from), along(dimension.to)]);
  const isFree = (at: number) => passing.every((place) => Math.abs(place - at) >= half)
    && placed.every((other) => other === one || other.lane !== one.lane || at + half <= other.taken[0] || at - half >= other.taken[1]);
  if (isFree(one.figureAt)) return;
  const middle = (one.low + one.high) / 2;
  const beside = passing.flatMap((place) => [place - half, place + half]).filter((at) => at - half >= one.low && at + half <= one.high);
  const beyond = [one.high + half + metrics.arrow, one.low - half - metrics.arrow, one.high + 3 * half, one.low - 3 * half];
  const choice = [...beside.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle)), ...beyond].find(isFree);
  if (choice === undefined) return;
  one.figureAt = choice;
  one.taken = [Math.min(one.taken[0], choice - half), Math.max(one.taken[1], choice + half)];
}

/** One line for each place, from the feature nearest to the lanes' far side out to the farthest lane that needs it. */
function extensionLines(
  placed: readonly Placed[], upright: boolean, across: (lane: number) => number, outward: 1 | -1, metrics: Metrics,
): Item[] {
  const ends = placed.flatMap(({ dimension, lane }) => [dimension.from, dimension.to].map((point) => ({
    along: upright ? point.y : point.x, start: upright ? point.x : point.y, end: across(lane) + outward * metrics.past, ref: dimension.ref,
  })));
  const merged: typeof ends = [];
  for (const end of ends) {
    const same = merged.find((other) => Math.abs(other.along - end.along) < 1e-6);
    if (!same) merged.push({ ...end });
    else {
      same.start = outward * Math.max(outward * same.start, outward * end.start);
      same.end = outward * Math.max(outward * same.end, outward * end.end);
    }
  }
  return merged.map(({ along, start, end, ref }) => upright
    ? stroke("dimension", { x: start, y: along }, { x: end, y: along }, ref)
    : stroke("dimension", { x: along, y: start }, { x: along, y: end }, ref));
}
