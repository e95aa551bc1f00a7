// Which camera pictures the marked points where they were marked? The homography from paper to straight picture and the bend of the
// lens that make the distances in the picture least (Gauss and Newton with halved steps). The bend is held near 0 by what is known of
// lenses beforehand, so that points that tell little of it leave it there.

import type { Vec2 } from "../../geometry/vector";
import { type Solved, leastSquares } from "../../numeric/leastSquares";
import { type Homography, mapped } from "./homography";
import { bent } from "./lens";

/** Eight numbers of the homography, the ninth being 1, and the bend of the lens. */
export type CameraNumbers = readonly number[];

export interface CameraFit {
  readonly numbers: CameraNumbers;
  /** The equations about the solution, every marked place straying by 1 pixel. */
  readonly solved: Solved;
  /** How far the numbers go off with a picture bent by 1 that is taken to be straight, to first order; null where the bend is among them. */
  readonly byBend: readonly number[] | null;
}

/** Pictures usually bend by less than this part of the half diagonal in their corners (common practice). */
const USUAL_BEND = 0.05;
/** Beyond this no camera bends. */
const MOST_BEND = 0.5;
const STEPS = 40;
/** Steps shorter than this, in numbers of about 1, are none. */
const SETTLED = 1e-12;
/** Of a central difference. */
const NUDGE = 1e-6;

/** Where the camera pictures a point of the (centred) paper. */
export function pictured(numbers: CameraNumbers, point: Vec2): Vec2 {
  const [h0 = 0, h1 = 0, h2 = 0, h3 = 0, h4 = 0, h5 = 0, h6 = 0, h7 = 0, k = 0] = numbers;
  return bent(k, mapped([h0, h1, h2, h3, h4, h5, h6, h7, 1], point));
}

/**
 * The camera from a first homography; `paper` centred, `picture` in the lens's frame, `pixel` the length of a pixel there. Null when
 * the points do not fix it. With `lens` false it keeps straight lines straight.
 */
export function cameraFit(first: Homography, paper: readonly Vec2[], picture: readonly Vec2[], pixel: number, lens: boolean): CameraFit | null {
  const begun = [...first.slice(0, 8).map((value) => value / first[8]), ...(lens ? [0] : [])];
  const errors = (numbers: CameraNumbers): number[] => {
    const off = paper.flatMap((point, i) => {
      const { x, y } = pictured(numbers, point);
      const marked = picture[i] ?? { x: NaN, y: NaN };
      return [(x - marked.x) / pixel, (y - marked.y) / pixel];
    });
    return lens ? [...off, (numbers[8] ?? 0) / USUAL_BEND] : off;
  };
  const found = (numbers: CameraNumbers, solved: Solved): CameraFit => ({ numbers, solved, byBend: lens ? null : (leastSquares(slopes(errors, numbers), bends(numbers, paper, pixel))?.values ?? null) });
  let numbers: CameraNumbers = begun;
  let now = errors(numbers);
  for (let step = 0; step < STEPS; step++) {
    const solved = leastSquares(slopes(errors, numbers), now.map((value) => -value));
    if (!solved) return null;
    const better = shortened(numbers, solved.values, (tried) => squares(errors(tried)), squares(now));
    if (!better) return found(numbers, solved);
    const moved = Math.max(...better.map((value, i) => Math.abs(value - (numbers[i] ?? 0))));
    numbers = better;
    now = errors(numbers);
    if (moved < SETTLED) return found(numbers, solved);
  }
  const solved = leastSquares(slopes(errors, numbers), now);
  return solved && found(numbers, solved);
}

/** Pixels by which each mark moves for a bend of 1, to first order. */
function bends(numbers: CameraNumbers, paper: readonly Vec2[], pixel: number): number[] {
  return paper.flatMap((point) => {
    const [after, before] = [pictured([...numbers, NUDGE], point), pictured([...numbers, -NUDGE], point)];
    return [(after.x - before.x) / (2 * NUDGE * pixel), (after.y - before.y) / (2 * NUDGE * pixel)];
  });
}

/** Slopes of every error by every number. */
function slopes(errors: (numbers: CameraNumbers) => number[], numbers: CameraNumbers): number[][] {
  const nudged = (k: number, by: number) => errors(numbers.map((value, i) => (i === k ? value + by : value)));
  const columns = numbers.map((_, k) => {
    const [after, before] = [nudged(k, NUDGE), nudged(k, -NUDGE)];
    return after.map((value, i) => (value - (before[i] ?? 0)) / (2 * NUDGE));
  });
  return (columns[0] ?? []).map((_, i) => columns.map((column) => column[i] ?? 0));
}

/** The numbers a whole step on, or the longest half, quarter and so on of it that is better; null when none is. */
function shortened(from: CameraNumbers, step: readonly number[], cost: (numbers: CameraNumbers) => number, before: number): CameraNumbers | null {
  for (let part = 1; part > 1e-4; part /= 2) {
    const tried = from.map((value, i) => value + part * (step[i] ?? 0));
    if (Math.abs(tried[8] ?? 0) < MOST_BEND && cost(tried) < before) return tried;
  }
  return null;
}

function squares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}
