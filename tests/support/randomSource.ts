/** A small seeded source of numbers (mulberry32): the same seed always gives the same sequence. */
export interface RandomSource {
  /** A number in [0, 1). */
  unit(): number;
  /** A number in [low, high). */
  between(low: number, high: number): number;
  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number;
  /** One of the items. */
  pick<Item>(items: readonly Item[]): Item;
  /** True with the given probability. */
  chance(probability: number): boolean;
}

export function randomSource(seed: number): RandomSource {
  let state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0;
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number): number => low + (high - low) * unit();
  const whole = (low: number, high: number): number => low + Math.floor(unit() * (high - low + 1));
  return { unit, between, whole, pick: (items) => items[whole(0, items.length - 1)]!, chance: (probability) => unit() < probability };
}
