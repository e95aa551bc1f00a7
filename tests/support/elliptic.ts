/** Complete elliptic integrals by the arithmetic-geometric mean (Abramowitz & Stegun 17.6.3, 17.6.4). The argument is the PARAMETER m = k². */

export interface CompleteIntegrals { readonly first: number; readonly second: number }

/** K(m) and E(m) for m in [0, 1]; K(1) is Infinity. */
export function completeIntegrals(m: number): CompleteIntegrals {
  if (!(m >= 0 && m <= 1)) throw new RangeError(`invalid parameter: ${m}; not in [0, 1]`);
  if (m === 1) return { first: Infinity, second: 1 };
  let a = 1;
  let b = Math.sqrt(1 - m);
  let c = Math.sqrt(m);
  let weight = 0.5;
  let sum = weight * c * c;
  for (let step = 0; step < 40 && Math.abs(c) > 1e-17; step += 1) {
    c = (a - b) / 2;
    const mean = (a + b) / 2;
    b = Math.sqrt(a * b);
    a = mean;
    weight *= 2;
    sum += weight * c * c;
  }
  const first = Math.PI / (2 * a);
  return { first, second: first * (1 - sum) };
}
