// Trigonometric polynomials a0 + Σ (a_k cos kθ + b_k sin kθ): sums, products and values.
// Every pair of cut faces meets on a round pipe where such a polynomial of degree 1 to 4 is zero. Angles in radians.

/** cos[k] and sin[k] are the coefficients of cos kθ and sin kθ; sin[0] is 0; both have the same length. */
export interface TrigPolynomial {
  readonly cos: readonly number[];
  readonly sin: readonly number[];
}

/** The constant polynomial. */
export function trigConstant(value: number): TrigPolynomial {
  return { cos: [value], sin: [0] };
}

/** a + b cos θ + c sin θ. */
export function trigLinear(a: number, b: number, c: number): TrigPolynomial {
  return { cos: [a, b], sin: [0, c] };
}

/** p + factor · q. */
export function trigSum(p: TrigPolynomial, q: TrigPolynomial, factor = 1): TrigPolynomial {
  const length = Math.max(p.cos.length, q.cos.length);
  const cos: number[] = [];
  const sin: number[] = [];
  for (let k = 0; k < length; k++) {
    cos.push((p.cos[k] ?? 0) + factor * (q.cos[k] ?? 0));
    sin.push((p.sin[k] ?? 0) + factor * (q.sin[k] ?? 0));
  }
  return { cos, sin };
}

/** p · q, by the product-to-sum identities. */
export function trigProduct(p: TrigPolynomial, q: TrigPolynomial): TrigPolynomial {
  const length = p.cos.length + q.cos.length - 1;
  const cos = new Array<number>(length).fill(0);
  const sin = new Array<number>(length).fill(0);
  const add = (k: number, c: number, s: number) => {
    const at = Math.abs(k);
    cos[at] = (cos[at] ?? 0) + c;
    if (at > 0) sin[at] = (sin[at] ?? 0) + (k < 0 ? -s : s);
  };
  p.cos.forEach((pc, i) => {
    const ps = p.sin[i] ?? 0;
    q.cos.forEach((qc, j) => {
      const qs = q.sin[j] ?? 0;
      add(i + j, (pc * qc - ps * qs) / 2, (ps * qc + pc * qs) / 2);
      add(i - j, (pc * qc + ps * qs) / 2, (ps * qc - pc * qs) / 2);
    });
  });
  return { cos, sin };
}

/** Value and derivative at θ (radians). */
export function trigValue(p: TrigPolynomial, theta: number): { value: number; slope: number } {
  let value = p.cos[0] ?? 0;
  let slope = 0;
  for (let k = 1; k < p.cos.length; k++) {
    const c = Math.cos(k * theta);
    const s = Math.sin(k * theta);
    const a = p.cos[k] ?? 0;
    const b = p.sin[k] ?? 0;
    value += a * c + b * s;
    slope += k * (b * c - a * s);
  }
  return { value, slope };
}
