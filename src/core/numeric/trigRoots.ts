// Where is a trigonometric polynomial zero? With z = e^{iθ} it becomes an ordinary polynomial of degree 2n whose
// roots on the unit circle are the answers. All roots are found at once by Aberth's simultaneous iteration
// (O. Aberth, Math. Comp. 27 (1973) 339-344, from memory), those near the circle are polished by Newton in θ.

import { wrapTurn } from "./angle";
import { type TrigPolynomial, trigValue } from "./trigPolynomial";

/** A double root strays from the circle by about the square root of the rounding: keep everything nearer than this. */
const NEAR_CIRCLE = 1e-5;
/** Coefficients below this share of the greatest are rounding. */
const NEGLIGIBLE = 1e-14;
/** Most rounds of the iteration; simple roots take about ten, fourfold ones all. */
const ROUNDS = 60;

/**
 * All angles in [0, 2π) where `p` is zero, unsorted; none when p is a constant, zero included. A tangency may come as
 * one or two places about 1e-8 apart (1e-6 where other zeros stand near); a place where p only nearly touches zero may
 * come too. Where three zeros fall together the place is known to about 1e-5. Where four do it may be left out: p keeps
 * its sign there and is lost in rounding for 1e-4 on both sides.
 */
export function trigRoots(p: TrigPolynomial): number[] {
  const scale = p.cos.reduce((most, c, k) => Math.max(most, Math.abs(c), Math.abs(p.sin[k] ?? 0)), 0);
  const degree = significantDegree(p, scale * NEGLIGIBLE);
  if (degree === 0) return [];
  if (degree === 1) return linearRoots(p, scale);
  return circleRoots(p, degree).map((theta) => polish(p, theta));
}

function significantDegree(p: TrigPolynomial, least: number): number {
  let degree = p.cos.length - 1;
  while (degree > 0 && Math.hypot(p.cos[degree] ?? 0, p.sin[degree] ?? 0) <= least) degree--;
  return degree;
}

function linearRoots(p: TrigPolynomial, scale: number): number[] {
  const [a = 0, b = 0] = p.cos;
  const c = p.sin[1] ?? 0;
  const reach = Math.hypot(b, c);
  if (Math.abs(a) > reach + scale * NEGLIGIBLE) return [];
  const middle = Math.atan2(c, b);
  const half = Math.acos(Math.max(-1, Math.min(1, -a / reach)));
  return [wrapTurn(middle + half), wrapTurn(middle - half)];
}

function polish(p: TrigPolynomial, start: number): number {
  let theta = start;
  for (let round = 0; round < 4; round++) {
    const { value, slope } = trigValue(p, theta);
    const step = value / slope;
    if (!(Math.abs(step) < 1e-4)) break;
    theta -= step;
  }
  return wrapTurn(theta);
}

function circleRoots(p: TrigPolynomial, degree: number): number[] {
  const { re, im } = aberth(p, degree);
  const angles: number[] = [];
  re.forEach((x, i) => {
    const y = im[i] ?? 0;
    if (Math.abs(Math.hypot(x, y) - 1) < NEAR_CIRCLE) angles.push(wrapTurn(Math.atan2(y, x)));
  });
  return angles;
}

/** All 2n roots of z^n p, as real and imaginary parts. */
function aberth(p: TrigPolynomial, degree: number): { re: number[]; im: number[] } {
  const count = 2 * degree;
  const cRe: number[] = [];
  const cIm: number[] = [];
  for (let j = 0; j <= count; j++) {
    const k = j - degree;
    const at = Math.abs(k);
    cRe.push(k === 0 ? (p.cos[0] ?? 0) : (p.cos[at] ?? 0) / 2);
    cIm.push(k === 0 ? 0 : (-Math.sign(k) * (p.sin[at] ?? 0)) / 2);
  }
  const re: number[] = [];
  const im: number[] = [];
  for (let i = 0; i < count; i++) {
    const radius = i % 2 === 0 ? 0.8 : 1.25;
    const angle = (2 * Math.PI * (i + 0.31)) / count;
    re.push(radius * Math.cos(angle));
    im.push(radius * Math.sin(angle));
  }
  for (let round = 0; round < ROUNDS; round++) {
    let greatest = 0;
    for (let i = 0; i < count; i++) greatest = Math.max(greatest, improve(i, re, im, cRe, cIm));
    if (greatest < 1e-15) break;
  }
  return { re, im };
}

/** One Aberth step of root i; returns its relative size. */
function improve(i: number, re: number[], im: number[], cRe: readonly number[], cIm: readonly number[]): number {
  const x = re[i] ?? 0;
  const y = im[i] ?? 0;
  let vRe = 0, vIm = 0, dRe = 0, dIm = 0;
  for (let j = cRe.length - 1; j >= 0; j--) {
    const nextRe = dRe * x - dIm * y + vRe;
    dIm = dRe * y + dIm * x + vIm;
    dRe = nextRe;
    const valueRe = vRe * x - vIm * y + (cRe[j] ?? 0);
    vIm = vRe * y + vIm * x + (cIm[j] ?? 0);
    vRe = valueRe;
  }
  if (vRe === 0 && vIm === 0) return 0;
  // Newton's correction is v / d; Aberth divides it by 1 - (v / d) Σ 1 / (z_i - z_j): the whole is v / (d - v Σ).
  let sumRe = 0, sumIm = 0;
  for (let j = 0; j < re.length; j++) {
    if (j === i) continue;
    const gapRe = x - (re[j] ?? 0);
    const gapIm = y - (im[j] ?? 0);
    const square = gapRe * gapRe + gapIm * gapIm;
    if (square === 0) continue;
    sumRe += gapRe / square;
    sumIm -= gapIm / square;
  }
  const underRe = dRe - (vRe * sumRe - vIm * sumIm);
  const underIm = dIm - (vRe * sumIm + vIm * sumRe);
  const square = underRe * underRe + underIm * underIm;
  if (square === 0) return 0;
  const stepRe = (vRe * underRe + vIm * underIm) / square;
  const stepIm = (vIm * underRe - vRe * underIm) / square;
  re[i] = x - stepRe;
  im[i] = y - stepIm;
  return Math.hypot(stepRe, stepIm) / Math.max(1e-300, Math.hypot(x, y));
}
