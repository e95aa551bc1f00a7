import { openingCut, pipeJob, planeCut, shapedCut, type Cut, type Job, type Leg, type Outline, type Profile, type Seam } from "./pipeJob";
import { randomSource, type RandomSource } from "./randomSource";

/**
 * Cut pipe number `n`: always the same job for the same number. Diameters 20 to 300 mm, up to six mixed cuts on both ends and through the wall, some of them
 * switched off. About two in five are "tidy", with directions in steps of 15° and lengths in steps of 5 mm, so that edges often meet exactly.
 */
export function randomPipe(n: number): Job {
  const source = randomSource(n);
  const tidy = source.chance(0.4);
  const diameter = lengthIn(source, tidy, 20, 300);
  const length = lengthIn(source, tidy, diameter * 0.6, diameter * 4);
  const thickness = source.chance(0.5) ? 0 : lengthIn(source, false, 0.3, diameter / 12);
  const basis = source.pick(["mean", "outside", "inside"] as const);
  const half = diameter / 2 + (basis === "mean" ? 0 : basis === "inside" ? thickness / 2 : -thickness / 2);
  const stock: Stock = { source, tidy, diameter, half, length };
  const cuts: Cut[] = [];
  const count = source.whole(0, 6);
  for (let index = 0; index < count; index += 1) cuts.push(randomCut(stock, `cut-${index}`));
  return pipeJob({
    diameter, length, thickness, cuts,
    basis, attitude: source.pick(["upright", "lying"]),
    stations: source.pick([4, 7, 8, 12, 12, 16, 24, 48]), critical: source.chance(0.3), face: source.pick(["inside", "outside"]),
    extra: source.chance(0.2) ? [directionOf(source, tidy)] : [], seam: randomSeam(source, tidy),
  });
}

interface Stock { readonly source: RandomSource; readonly tidy: boolean; readonly diameter: number; /** Radius of the neutral surface. */ readonly half: number; readonly length: number }

/** An angle seam or a named one. */
export function randomSeam(source: RandomSource, tidy: boolean): Seam {
  if (source.chance(0.4)) return { at: "angle", angle: directionOf(source, tidy) };
  return { at: source.pick(["shortest", "longest", "front", "right", "back", "left"] as const) };
}

/** A random chain of lines and arcs across a pipe of radius `half`; it may cross itself. */
export function randomChain(source: RandomSource, tidy: boolean, half: number, level: number): Extract<Profile, { shape: "free" }> {
  const rise = (): number => level + lengthIn(source, tidy, -half, half);
  const start = { x: -half - (source.chance(0.3) ? 0 : lengthIn(source, tidy, 1, half)), z: rise() };
  const end = { x: half + (source.chance(0.3) ? 0 : lengthIn(source, tidy, 1, half)), z: rise() };
  const between = Array.from({ length: source.whole(0, 4) }, () => ({ x: lengthIn(source, tidy, -half, half), z: rise() }));
  if (source.chance(0.8)) between.sort((a, b) => a.x - b.x);
  let from = start;
  const legs: Leg[] = [];
  for (const to of [...between, end]) {
    if (to.x === from.x && to.z === from.z) continue;
    legs.push(randomLeg(source, from, to));
    from = to;
  }
  return { shape: "free", start, legs };
}

function randomLeg(source: RandomSource, from: { x: number; z: number }, to: { x: number; z: number }): Leg {
  const turn = source.pick(["left", "right"] as const);
  const chord = Math.hypot(to.x - from.x, to.z - from.z);
  const kind = source.unit();
  if (kind < 0.55) return { to };
  const long = source.chance(0.06);
  const radius = chord * source.pick([0.6, 0.8, 1, 2, 5]);
  if (kind < 0.8) return { to, radius, turn, long };
  const away = Math.sqrt(radius ** 2 - chord ** 2 / 4) * (turn === "left" ? 1 : -1);
  const centre = { x: (from.x + to.x) / 2 - (away * (to.z - from.z)) / chord, z: (from.z + to.z) / 2 + (away * (to.x - from.x)) / chord };
  return { to, centre, turn };
}

function randomCut(stock: Stock, id: string): Cut {
  const { source, tidy, diameter, length } = stock;
  const end = source.pick(["top", "bottom"] as const);
  const on = !source.chance(0.08);
  const direction = directionOf(source, tidy);
  const kind = source.unit();
  const level = end === "top" ? lengthIn(source, tidy, length * 0.45, length * 1.05) : lengthIn(source, tidy, -length * 0.05, length * 0.5);
  if (kind < 0.35) {
    const angle = source.chance(0.1) ? source.between(70, 89) : tidy ? source.pick([0, 15, 30, 45, 60]) : source.between(0, 70);
    return planeCut({ id, on, end, direction, angle, height: level, at: source.pick(["axis", "axis", "low", "high"]) });
  }
  if (kind < 0.65) return shapedCut(randomProfile(stock, level), { id, on, end, direction });
  return openingCut(randomOutline(stock), {
    id, on, direction, height: lengthIn(source, tidy, 0, length), through: source.pick(["near", "both"]),
    offset: source.chance(0.5) ? 0 : lengthIn(source, tidy, -diameter * 0.55, diameter * 0.55),
  });
}

function randomProfile({ source, tidy, diameter, half }: Stock, level: number): Profile {
  const centre = source.chance(0.5) ? 0 : lengthIn(source, tidy, -half, half);
  const rise = lengthIn(source, tidy, diameter * 0.1, diameter * 0.95);
  const rising = source.pick(["left", "right"] as const);
  switch (source.whole(0, 5)) {
    case 0: return { shape: "hollow", radius: (half + Math.abs(centre)) * source.pick([1, 1.001, 1.2, 2, 6]), centre, height: level };
    case 1: return { shape: "nose", radius: half * source.pick([0.4, 0.8, 1, 1.3, 3]), centre, height: level };
    case 2: return { shape: "ogee", low: level - rise / 2, high: level + rise / 2, rising, radius: source.chance(0.6) ? null : Math.hypot(half, rise / 2) * source.pick([0.6, 0.8, 1.5, 4]) };
    case 3: return { shape: "step", low: level - rise / 2, high: level + rise / 2, rising, position: centre };
    case 4: return { shape: "vee", angle: source.pick([30, 60, 90, 120, source.between(20, 170)]), centre, height: level };
    default: return randomChain(source, tidy, half, level);
  }
}

function randomOutline({ source, tidy, diameter, length }: Stock): Outline {
  const turn = source.pick([0, 0, 45, 90, source.between(-180, 180)]);
  const size = (): number => lengthIn(source, tidy, diameter * 0.08, diameter * source.pick([0.4, 0.7, 1.1]));
  switch (source.whole(0, 3)) {
    case 0: return { shape: "rectangle", width: size(), length: source.chance(0.1) ? length : size(), turn };
    case 1: return { shape: "slot", width: size(), length: size(), turn };
    default: return { shape: "round", diameter: source.chance(0.1) ? diameter : size() };
  }
}

function directionOf(source: RandomSource, tidy: boolean): number {
  return tidy ? 15 * source.whole(0, 23) : Math.round(source.between(-360, 360) * 1000) / 1000;
}

/** A length in the range, rounded to 5 mm for tidy pipes (never to nothing) and to a thousandth otherwise. */
function lengthIn(source: RandomSource, tidy: boolean, low: number, high: number): number {
  const value = source.between(low, high);
  if (!tidy) return Math.round(value * 1000) / 1000;
  const rounded = Math.round(value / 5) * 5;
  return low > 0 && rounded === 0 ? 5 : rounded;
}
