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
  const at = (theta: number): readonly Reach[] => leftOver(length, removals.flatMap((removal) => removal(theta)));
  return { radius, length, at, lengthAt: (theta) => at(theta).reduce((sum, reach) => sum + (reach.to - reach.from), 0) };
}

function leftOver(length: number, removed: readonly Reach[]): readonly Reach[] {
  const kept: Reach[] = [];
  let from = 0;
  for (const gone of [...removed].sort((a, b) => a.from - b.from)) {
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
  return (theta) => {
    const height = axis + rise * Math.cos(theta - radians(cut.direction));
    return [cut.end === "top" ? { from: height, to: Infinity } : { from: -Infinity, to: height }];
  };
}

function shapedRemoval(cut: ShapedCut, radius: number): Removal {
  const steps = profileSteps(cut.profile, cut.end === "top" ? 1 : -1, radius);
  return (theta) => {
    const x = radius * Math.sin(theta - radians(cut.direction));
    const heights = crossingHeights(steps, x);
    const fences = cut.end === "top" ? [...heights, Infinity] : [-Infinity, ...heights];
    const reaches: Reach[] = [];
    for (let index = 0; index + 1 < fences.length; index += 2) reaches.push({ from: fences[index]!, to: fences[index + 1]! });
    return reaches;
  };
}

function crossingHeights(steps: readonly Step[], x: number): number[] {
  return steps.filter((step) => step.left <= x && x < step.right).map((step) => step.height(x)).sort((a, b) => a - b);
}

function openingRemoval(cut: OpeningCut, radius: number): Removal {
  return (theta) => {
    const around = theta - radians(cut.direction);
    if (cut.through === "near" && Math.cos(around) <= 0) return [];
    return outlineReach(cut, radius * Math.sin(around) - cut.offset);
  };
}

/** The heights an upright line at distance `x` to the right of the outline's middle spends inside it. */
function outlineReach({ outline, height }: OpeningCut, x: number): readonly Reach[] {
  if (outline.shape === "round") return around(height, discReach(x, 0, 0, outline.diameter / 2));
  const [sine, cosine] = [Math.sin(radians(outline.turn)), Math.cos(radians(outline.turn))];
  if (outline.shape === "rectangle") return around(height, boxReach(x, sine, cosine, outline.width, outline.length));
  const round = Math.min(outline.width, outline.length) / 2;
  const across = outline.width / 2 - round;
  const along = outline.length / 2 - round;
  const end = { x: across * cosine - along * sine, z: across * sine + along * cosine };
  const box = across > 0 ? boxReach(x, sine, cosine, 2 * across, 2 * round) : boxReach(x, sine, cosine, 2 * round, 2 * along);
  const parts = [box, discReach(x, end.x, end.z, round), discReach(x, -end.x, -end.z, round)].filter((reach) => reach !== null);
  if (parts.length === 0) return [];
  return around(height, { from: Math.min(...parts.map((reach) => reach.from)), to: Math.max(...parts.map((reach) => reach.to)) });
}

function around(height: number, reach: Reach | null): readonly Reach[] {
  return reach === null ? [] : [{ from: height + reach.from, to: height + reach.to }];
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
