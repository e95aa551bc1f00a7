// How far are readings from what is expected of them? A sum of squares in units of the reading noise that no stray reading can
// spoil, and the one free quantity that makes it least.

/** Reading noise as a standard deviation, mm or degrees: even within ±0.5 it is 0.29. */
export const READING_NOISE = 0.3;
/** A reading of which nothing is expected costs as much as an ordinary good one; a stray one this much more than the worst that is none. */
const ORDINARY = 1;
const STRAY = 9;

/** Beyond this deviation (mm, degrees) a reading is a stray one; `tolerance` is what the teacher allows. */
export function strayBound(tolerance: number): number {
  return Math.max((10 / 3) * READING_NOISE, tolerance);
}

/** What a deviation (mm, degrees) adds to the misfit; null where nothing is expected, Infinity where nothing can be read. */
export function costOf(deviation: number | null, bound: number): number {
  if (deviation === null) return ORDINARY;
  const off = Math.abs(deviation);
  return off <= bound ? (off / READING_NOISE) ** 2 : (bound / READING_NOISE) ** 2 + STRAY;
}

/**
 * The misfit of deviations whose own noise may exceed the reading noise: -2 ln of the likelihood at the noise that suits them
 * best, up to `most` of the worst set aside as stray. A hand that draws unsurely thus makes no mistake likely.
 */
export function unsureCost(deviations: readonly (number | null)[], bound: number, most: number): number {
  const squares = deviations.map((one) => (one === null ? ORDINARY : (one / READING_NOISE) ** 2)).sort((a, b) => b - a);
  const costs = Array.from({ length: Math.min(most, squares.length - 1) + 1 }, (_, strays) => {
    const kept = squares.slice(strays);
    const mean = kept.reduce((sum, one) => sum + one, 0) / kept.length;
    return strays * costOf(Infinity, bound) + kept.length * (mean <= 1 ? mean : 1 + Math.log(mean));
  });
  return Math.min(...costs);
}

/** `value` less the nearest of times × each + plus; Infinity when there are none. */
export function deviationOf(value: number, expected: readonly number[], times = 1, plus = 0): number {
  let best = Infinity;
  for (const one of expected) {
    const off = value - (times * one + plus);
    if (Math.abs(off) < Math.abs(best)) best = off;
  }
  return best;
}

/** A value expected to be base[k] + slope[k] × the free quantity, for one of the k. */
export interface FreeRow {
  readonly value: number;
  readonly base: readonly number[];
  readonly slope: readonly number[];
}

/**
 * The free quantity that fits most rows: the median of what each says alone, then least squares over those within twice `bound`,
 * held in [low, high]. 0 when no row says anything.
 */
export function foundQuantity(rows: readonly FreeRow[], bound: number, low: number, high: number): number {
  const held = (found: number) => Math.max(low, Math.min(high, found));
  const steepest = Math.max(0, ...rows.map(({ slope }) => Math.abs(slope[0] ?? 0)));
  let found = held(median(rows.flatMap(({ value, base, slope }) => {
    const [first = 0] = slope;
    return Math.abs(first) > 0.1 * steepest ? [(value - (base[0] ?? 0)) / first] : [];
  })));
  for (let round = 0; round < 4; round++) {
    let over = 0, under = 0;
    for (const row of rows) {
      const { off, slope } = nearest(row, found);
      if (!(Math.abs(off) <= 2 * bound)) continue;
      over += slope * off;
      under += slope * slope;
    }
    if (under > 0) found = held(found + over / under);
  }
  return found;
}

function nearest({ value, base, slope }: FreeRow, found: number): { off: number; slope: number } {
  let best = { off: Infinity, slope: 0 };
  base.forEach((one, k) => {
    const off = value - one - found * (slope[k] ?? 0);
    if (Math.abs(off) < Math.abs(best.off)) best = { off, slope: slope[k] ?? 0 };
  });
  return best;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}
