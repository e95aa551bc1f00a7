import type { Cut, Job, OpeningCut, PlaneCut, ShapedCut } from "./pipeJob";
import { profileSteps, type Step } from "./profileChain";

/**
 * The slow, obvious answer to "what is left of the element at this direction?", cut by cut, from the meaning of a job alone.
 * Directions in radians from the front, anticlockwise from above; heights in mm.
 */
export interface Reach { readonly from: number; readonly to: number }

export interface KeptElements {
  /** Radius of the surface that girth and cuts are found on. */
  readonly radius: number;
  readonly length: number;
  /** Kept reaches of the element, lowest first. */
  readonly at: (theta: number) => readonly Reach[];
  /** Total kept length of the element. */
  readonly lengthAt: (theta: number) => number;
}

type Removal = (theta: number) => readonly Reach[];

export function neutralRadius(job: Job): number {
  const { diameter, basis, thickness } = job.part;
  if (basis === "outside") return (diameter - thickness) / 2;
  if (basis === "inside") return (diameter + thickness) / 2;
  return diameter / 2;
}

export function keptElements(job: Job): KeptElements {
  const radius = neutralRadius(job);
  const { length } = job.part;
  const removals = job.part.cuts.filter((cut) => cut.on).map((cut) => removalBy(cut, radius));
  const at = (theta: number): readonly Reach[] => {
    const removed: Reach[] = [];
    for (const removal of removals) removed.push(...removal(theta));
    return leftOver(length, removed.sort((a, b) => a.from - b.from));
  };
  const lengthAt = (theta: number): number => {
    let sum = 0;
    for (const { from, to } of at(theta)) sum += to - from;
    return sum;
  };
  return { radius, length, at, lengthAt };
}

/** What is left of the whole length; the removed reaches lowest first. */
function leftOver(length: number, removed: readonly Reach[]): readonly Reach[] {
  const kept: Reach[] = [];
  let from = 0;
  for (const gone of removed) {
    const to = Math.min(gone.from, length);
    if (to > from) kept.push({ from, to });
    from = Math.max(from, gone.to);
  }
  if (length > from) kept.push({ from, to: length });
  return kept;
}

function removalBy(cut: Cut, radius: number): Removal {
  if (cut.kind === "plane") return planeRemoval(cut, radius);
  if (cut.kind === "shaped") return shapedRemoval(cut, radius);
  return openingRemoval(cut, radius);
}

function planeRemoval(cut: PlaneCut, radius: number): Removal {
  const rise = radius * Math.tan(radians(cut.angle));
  const axis = cut.at === "axis" ? cut.height : cut.at === "low" ? cut.height + rise : cut.height - rise;
  const direction = radians(cut.direction);
  return (theta) => {
    const height = axis + rise * Math.cos(theta - direction);
    return [cut.end === "top" ? { from: height, to: Infinity } : { from: -Infinity, to: height }];
  };
}

function shapedRemoval(cut: ShapedCut, radius: number): Removal {
  const steps = profileSteps(cut.profile, cut.end === "top" ? 1 : -1, radius);
  const direction = radians(cut.direction);
  return (theta) => {
    const fences = crossingHeights(steps, radius * Math.sin(theta - direction));
    if (cut.end === "top") fences.push(Infinity);
    else fences.unshift(-Infinity);
    const reaches: Reach[] = [];
    for (let index = 0; index + 1 < fences.length; index += 2) reaches.push({ from: fences[index]!, to: fences[index + 1]! });
    return reaches;
  };
}

function crossingHeights(steps: readonly Step[], x: number): number[] {
  const heights: number[] = [];
  for (const { left, right, height } of steps) if (left <= x && x < right) heights.push(height(x));
  return heights.sort((a, b) => a - b);
}

function openingRemoval(cut: OpeningCut, radius: number): Removal {
  const direction = radians(cut.direction);
  const reachAt = outlineReach(cut.outline);
  return (theta) => {
    const around = theta - direction;
    if (cut.through === "near" && Math.cos(around) <= 0) return [];
    const reach = reachAt(radius * Math.sin(around) - cut.offset);
    return reach === null ? [] : [{ from: cut.height + reach.from, to: cut.height + reach.to }];
  };
}

/** The heights above its middle an upright line at distance `x` to the right of it spends inside the outline; null for none. */
function outlineReach(outline: OpeningCut["outline"]): (x: number) => Reach | null {
  if (outline.shape === "round") return (x) => discReach(x, 0, 0, outline.diameter / 2);
  const [sine, cosine] = [Math.sin(radians(outline.turn)), Math.cos(radians(outline.turn))];
  if (outline.shape === "rectangle") return (x) => boxReach(x, sine, cosine, outline.width, outline.length);
  const round = Math.min(outline.width, outline.length) / 2;
  const across = outline.width / 2 - round;
  const along = outline.length / 2 - round;
  const end = { x: across * cosine - along * sine, z: across * sine + along * cosine };
  const [wide, long] = across > 0 ? [2 * across, 2 * round] : [2 * round, 2 * along];
  return (x) => joined(joined(boxReach(x, sine, cosine, wide, long), discReach(x, end.x, end.z, round)), discReach(x, -end.x, -end.z, round));
}

/** From the lower beginning to the higher end. */
function joined(a: Reach | null, b: Reach | null): Reach | null {
  if (a === null || b === null) return a ?? b;
  return { from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) };
}

function discReach(x: number, centreX: number, centreZ: number, radius: number): Reach | null {
  const square = radius ** 2 - (x - centreX) ** 2;
  return square > 0 ? { from: centreZ - Math.sqrt(square), to: centreZ + Math.sqrt(square) } : null;
}

/** A box turned anticlockwise: |x cos + z sin| < width / 2 and |z cos - x sin| < length / 2. */
function boxReach(x: number, sine: number, cosine: number, width: number, length: number): Reach | null {
  const a = strip(x * cosine, sine, width / 2);
  const b = strip(-x * sine, cosine, length / 2);
  const reach = { from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) };
  return reach.to > reach.from ? reach : null;
}

/** The z with |offset + slope z| < half. */
function strip(offset: number, slope: number, half: number): Reach {
  if (Math.abs(slope) < 1e-15) return Math.abs(offset) < half ? { from: -Infinity, to: Infinity } : { from: 0, to: 0 };
  const ends = [(-half - offset) / slope, (half - offset) / slope];
  return { from: Math.min(...ends), to: Math.max(...ends) };
}

export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
