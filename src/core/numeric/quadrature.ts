// Integrals of smooth functions: Gauss-Legendre with halving until two levels agree.

/** Nodes in (0, 1) and weights of the 7-point rule: Abramowitz & Stegun, table 25.4, n = 7 (mapped from [-1, 1]). */
const HALF = [
  [0, 0.417959183673469],
  [0.405845151377397, 0.381830050505119],
  [0.741531185599394, 0.279705391489277],
  [0.949107912342759, 0.12948496616887],
] as const;

/** Most halvings: the narrowest part is 2^-14 of the whole. */
const DEEPEST = 14;

/**
 * The integral of `f` over [from, to], to about `tolerance` (absolute, same unit as the integral): a part is halved until
 * both levels agree within it, which leaves far less than that behind.
 * Functions with a square-root end are halved towards that end; the depth is limited, so the result is always finite for finite f.
 */
export function integrate(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  return halve(f, from, to, gauss(f, from, to), tolerance, DEEPEST);
}

function halve(f: (x: number) => number, from: number, to: number, whole: number, tolerance: number, depth: number): number {
  const middle = (from + to) / 2;
  const left = gauss(f, from, middle);
  const right = gauss(f, middle, to);
  if (depth === 0 || Math.abs(left + right - whole) <= tolerance) return left + right;
  return halve(f, from, middle, left, tolerance, depth - 1) + halve(f, middle, to, right, tolerance, depth - 1);
}

function gauss(f: (x: number) => number, from: number, to: number): number {
  const centre = (from + to) / 2;
  const reach = (to - from) / 2;
  let sum = 0;
  for (const [node, weight] of HALF) {
    sum += node === 0 ? weight * f(centre) : weight * (f(centre - reach * node) + f(centre + reach * node));
  }
  return sum * reach;
}
