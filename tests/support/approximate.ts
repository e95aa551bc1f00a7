/** Comparison of measured with expected numbers. No tolerance is assumed: every call states its own, in the unit of the numbers. */

/** True where both numbers are finite and differ by at most `tolerance`. Throws RangeError on a tolerance that is not a number of 0 or more. */
export function isClose(actual: number, expected: number, tolerance: number): boolean {
  if (!(tolerance >= 0)) throw new RangeError(`invalid tolerance: ${tolerance}; not in [0, ∞]`);
  return Number.isFinite(actual) && Number.isFinite(expected) && Math.abs(actual - expected) <= tolerance;
}

/** Throws where `actual` strays from `expected` by more than `tolerance`, or where either is not a finite number. */
export function expectClose(actual: number, expected: number, tolerance: number, what = "value"): void {
  if (!isClose(actual, expected, tolerance)) {
    throw new Error(`${what}: got ${actual}, expected ${expected} within ${tolerance} (off by ${actual - expected})`);
  }
}

/** As `expectClose` for each item of two lists; also throws where one list is longer than the other. */
export function expectAllClose(actual: readonly number[], expected: readonly number[], tolerance: number, what = "list"): void {
  if (actual.length !== expected.length) {
    throw new Error(`${what}: got ${actual.length} items, expected ${expected.length}: [${actual.join(", ")}]`);
  }
  expected.forEach((value, index) => expectClose(actual[index]!, value, tolerance, `${what}[${index}]`));
}
