// The cubic spline through values given round a closed girth, and the natural one between breaks: the curve a
// drafter's spline takes. Equations for the second derivatives as in any numerical text (for example Press et al.,
// Numerical Recipes, section 3.3; the cyclic case by the Sherman-Morrison formula, section 2.7; from memory).

/** A piecewise cubic: at[i] ascending, value[i] and second derivative bend[i] there. */
export interface Spline {
  readonly at: readonly number[];
  readonly value: readonly number[];
  readonly bend: readonly number[];
}

/**
 * The spline through (at[i], value[i]), i = 0 … n, with value[n] = value[0] and all derivatives up to the second equal
 * at both ends. At least four points, `at` strictly ascending; neither that nor the equal end values are checked.
 * @throws RangeError for fewer points.
 */
export function periodicSpline(at: readonly number[], value: readonly number[]): Spline {
  const n = at.length - 1;
  if (n < 3) throw new RangeError(`too few points: ${at.length}; not in [4, ∞)`);
  const step = (i: number) => num(at, i + 1) - num(at, i);
  const rise = (i: number) => (num(value, i + 1) - num(value, i)) / step(i);
  const low: number[] = [], middle: number[] = [], high: number[] = [], right: number[] = [];
  for (let i = 0; i < n; i++) {
    const last = i === 0 ? n - 1 : i - 1;
    low.push(step(last));
    middle.push(2 * (step(last) + step(i)));
    high.push(step(i));
    right.push(6 * (rise(i) - rise(last)));
  }
  const bend = solveCyclic(low, middle, high, right);
  return { at, value, bend: [...bend, bend[0] ?? 0] };
}

/**
 * The spline through the points with second derivative 0 at its two ends. At least two points, `at` strictly ascending
 * (not checked).
 * @throws RangeError for fewer points.
 */
export function naturalSpline(at: readonly number[], value: readonly number[]): Spline {
  const n = at.length - 1;
  if (n < 1) throw new RangeError(`too few points: ${at.length}; not in [2, ∞)`);
  const low: number[] = [], middle: number[] = [], high: number[] = [], right: number[] = [];
  for (let i = 1; i < n; i++) {
    const before = num(at, i) - num(at, i - 1);
    const after = num(at, i + 1) - num(at, i);
    low.push(before);
    middle.push(2 * (before + after));
    high.push(after);
    right.push(6 * ((num(value, i + 1) - num(value, i)) / after - (num(value, i) - num(value, i - 1)) / before));
  }
  return { at, value, bend: [0, ...solveBanded(low, middle, high, right), 0] };
}

/** Value and first derivative at x, which is held between the first and the last place. */
export function splineValue({ at, value, bend }: Spline, x: number): { value: number; slope: number } {
  const i = spanOf(at, x);
  const h = num(at, i + 1) - num(at, i);
  const b = Math.max(0, Math.min(1, (x - num(at, i)) / h));
  const a = 1 - b;
  const [y0, y1, m0, m1] = [num(value, i), num(value, i + 1), num(bend, i), num(bend, i + 1)];
  return {
    value: a * y0 + b * y1 + (((a * a * a - a) * m0 + (b * b * b - b) * m1) * h * h) / 6,
    slope: (y1 - y0) / h + (((3 * b * b - 1) * m1 - (3 * a * a - 1) * m0) * h) / 6,
  };
}

function spanOf(at: readonly number[], x: number): number {
  let low = 0;
  let high = at.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (num(at, middle) <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Tridiagonal equations: low[i] x[i-1] + middle[i] x[i] + high[i] x[i+1] = right[i]. */
function solveBanded(low: readonly number[], middle: readonly number[], high: readonly number[], right: readonly number[]): number[] {
  const n = middle.length;
  const upper: number[] = [];
  const x: number[] = [];
  for (let i = 0; i < n; i++) {
    const pivot = num(middle, i) - (i > 0 ? num(low, i) * num(upper, i - 1) : 0);
    upper.push(num(high, i) / pivot);
    x.push((num(right, i) - (i > 0 ? num(low, i) * num(x, i - 1) : 0)) / pivot);
  }
  for (let i = n - 2; i >= 0; i--) x[i] = num(x, i) - num(upper, i) * num(x, i + 1);
  return x;
}

/** The same with x[-1] = x[n-1] and x[n] = x[0]. */
function solveCyclic(low: readonly number[], middle: readonly number[], high: readonly number[], right: readonly number[]): number[] {
  const n = middle.length;
  const corner = num(low, 0);
  const other = num(high, n - 1);
  const gamma = -num(middle, 0);
  const changed = [...middle];
  changed[0] = num(middle, 0) - gamma;
  changed[n - 1] = num(middle, n - 1) - (corner * other) / gamma;
  const x = solveBanded(low, changed, high, right);
  const unitRight = new Array<number>(n).fill(0);
  unitRight[0] = gamma;
  unitRight[n - 1] = other;
  const z = solveBanded(low, changed, high, unitRight);
  const factor = (num(x, 0) + (corner * num(x, n - 1)) / gamma) / (1 + num(z, 0) + (corner * num(z, n - 1)) / gamma);
  return x.map((value, i) => value - factor * num(z, i));
}

function num(list: readonly number[], i: number): number {
  return list[i] ?? 0;
}
