// How does one plane fall on another through a pinhole? Nine numbers by rows: (x, y, 1) goes to three sums, the first two divided by
// the third.

import type { Vec2 } from "../../geometry/vector";

export type Homography = readonly [number, number, number, number, number, number, number, number, number];

/** The divisor of a point: its depth in front of the camera but for a factor; where it is 0 the point falls on nothing. */
export function depth(h: Homography, { x, y }: Vec2): number {
  return h[6] * x + h[7] * y + h[8];
}

/** Where a point falls; its depth must not be 0. */
export function mapped(h: Homography, { x, y }: Vec2): Vec2 {
  const w = depth(h, { x, y });
  return { x: (h[0] * x + h[1] * y + h[2]) / w, y: (h[3] * x + h[4] * y + h[5]) / w };
}

/** First q, then p. */
export function product(p: Homography, q: Homography): Homography {
  const at = (row: number, column: number) => [0, 1, 2].reduce((sum, k) => sum + (p[3 * row + k] ?? 0) * (q[3 * k + column] ?? 0), 0);
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
}

export function determinant([a, b, c, d, e, f, g, h, i]: Homography): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

/** The way back, with the same sign of depth (the adjugate by the determinant). */
export function inverse(h: Homography): Homography {
  const [a, b, c, d, e, f, g, i, j] = h;
  const by = determinant(h);
  return [
    (e * j - f * i) / by, (c * i - b * j) / by, (b * f - c * e) / by,
    (f * g - d * j) / by, (a * j - c * g) / by, (c * d - a * f) / by,
    (d * i - e * g) / by, (b * g - a * i) / by, (a * e - b * d) / by,
  ];
}
