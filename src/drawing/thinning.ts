// When numbers stand too close, every how manyth is written?

/** Steps tried one after the other. */
export const STEPS = [1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 45, 60, 90, 180] as const;

/**
 * Of things numbered 0 to `count` - 1 (`ordinal` gives the number), every one, or every second, third, …, with `keeps` always kept,
 * at the smallest step for which `fits` accepts them all; without one only what `keeps` keeps.
 */
export function thinned<T>(
  things: readonly T[], count: number, ordinal: (thing: T) => number, keeps: (thing: T) => boolean, fits: (chosen: readonly T[]) => boolean,
): T[] {
  for (const step of STEPS) {
    // The last numbered one keeps half a step from the number where the count begins again.
    const chosen = things.filter((thing) => keeps(thing) || (ordinal(thing) % step === 0 && count - ordinal(thing) >= step / 2));
    if (fits(chosen)) return chosen;
  }
  return things.filter(keeps);
}

/** The smallest step at which lines `pitch` mm apart stand at least `least` mm apart. */
export function stepFor(pitch: number, least: number): number {
  return STEPS.find((step) => step * pitch >= least) ?? STEPS[STEPS.length - 1] ?? 1;
}
