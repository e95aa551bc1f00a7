// Which numbers satisfy more equations than there are unknowns best, and how surely are they known? Orthogonal triangles by
// Householder's reflections (elementary; Golub and Van Loan, Matrix Computations, chapter 5, from memory).

/** A column that lies within this part of its length in the span of those before it is dependent on them. */
const DEPENDENT = 1e-11;

export interface Solved {
  /** The unknowns that make the sum of squares of A x − b least. */
  readonly values: readonly number[];
  /** Upper triangle R with RᵀR = AᵀA, by rows. */
  readonly triangle: readonly (readonly number[])[];
}

/**
 * The least-squares solution of `rows` · x = `right`; null when the columns are dependent, so that no one solution is best, or
 * when there are fewer rows than columns. @throws RangeError for rows of unequal length or numbers that are not finite.
 */
export function leastSquares(rows: readonly (readonly number[])[], right: readonly number[]): Solved | null {
  const width = rows[0]?.length ?? 0;
  if (rows.length !== right.length || rows.some((row) => row.length !== width)) throw new RangeError("rows of unequal length");
  // The right side is carried along as a last column.
  const a = rows.map((row, i) => [...row, right[i] ?? 0]);
  if (a.flat().some((value) => !Number.isFinite(value))) throw new RangeError("an equation holds a number that is not finite");
  if (width === 0 || rows.length < width) return null;
  const lengths = Array.from({ length: width }, (_, k) => lengthOfColumn(a, k, 0));
  for (let k = 0; k < width; k++) if (!reflect(a, k, lengths[k] ?? 0)) return null;
  const triangle = Array.from({ length: width }, (_, i) => Array.from({ length: width }, (_, k) => (k < i ? 0 : (a[i]?.[k] ?? 0))));
  return { values: backwards(triangle, a.slice(0, width).map((row) => row[width] ?? 0)), triangle };
}

/**
 * How far the value of `weights` · x strays (standard error) when every right side strays by 1, for the triangle of a solution.
 */
export function standardError({ triangle }: Solved, weights: readonly number[]): number {
  // The length of y with Rᵀ y = weights, solved from the top.
  const y: number[] = [];
  weights.forEach((weight, i) => {
    const sum = y.reduce((total, value, k) => total + value * (triangle[k]?.[i] ?? 0), 0);
    y.push((weight - sum) / (triangle[i]?.[i] ?? NaN));
  });
  return Math.hypot(...y);
}

/** Reflects column k, from row k down, onto its first entry, and all columns after it alike; false when nothing is left of it. */
function reflect(a: number[][], k: number, whole: number): boolean {
  const size = lengthOfColumn(a, k, k);
  if (!(size > DEPENDENT * whole)) return false;
  const first = a[k]?.[k] ?? 0;
  const top = first > 0 ? -size : size;
  const mirror = a.slice(k).map((row, i) => (i === 0 ? first - top : (row[k] ?? 0)));
  const square = mirror.reduce((sum, value) => sum + value * value, 0);
  for (let column = k; column < (a[k]?.length ?? 0); column++) {
    const along = (2 / square) * mirror.reduce((sum, value, i) => sum + value * (a[k + i]?.[column] ?? 0), 0);
    mirror.forEach((value, i) => {
      const row = a[k + i];
      if (row) row[column] = (row[column] ?? 0) - along * value;
    });
  }
  return true;
}

function lengthOfColumn(a: readonly (readonly number[])[], k: number, from: number): number {
  return Math.hypot(...a.slice(from).map((row) => row[k] ?? 0));
}

function backwards(triangle: readonly (readonly number[])[], right: readonly number[]): number[] {
  const values = new Array<number>(right.length).fill(0);
  for (let i = right.length - 1; i >= 0; i--) {
    const row = triangle[i] ?? [];
    const sum = values.reduce((total, value, k) => (k > i ? total + value * (row[k] ?? 0) : total), 0);
    values[i] = ((right[i] ?? 0) - sum) / (row[i] ?? NaN);
  }
  return values;
}
