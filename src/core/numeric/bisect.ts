// Where does a continuous function change sign? Bisection to the last bit: slow, certain.

/**
 * A place between `low` and `high` (finite, either may be the greater) where `f` changes sign, to the last representable bit.
 * @throws RangeError when an end is not finite, f(low) and f(high) have the same strict sign, or either is NaN.
 */
export function bisect(f: (x: number) => number, low: number, high: number): number {
  if (!Number.isFinite(high - low)) throw new RangeError(`invalid ends: ${low}, ${high}; not a finite distance apart`);
  const sign = Math.sign(f(low));
  if (sign === 0) return low;
  if (!(sign * f(high) <= 0)) throw new RangeError(`no change of sign between ${low} and ${high}`);
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle === low || middle === high) return middle;
    if (sign * f(middle) > 0) low = middle;
    else high = middle;
  }
}
