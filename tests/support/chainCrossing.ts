import { chainPoints } from "./chainPoints";
import { firstCrossing } from "./crossings";
import { neutralRadius } from "./keptElements";
import { distanceTo } from "./loopSampling";
import type { Job, Profile } from "./pipeJob";
import { asChain } from "./profileChain";

/**
 * True where a profile's chain, with the level runs beyond its ends, crosses itself by more than rounding. Closely: found on 4001 chords an arc, and the
 * shallowest crossing counts; else on 211 chords, by more than 1e-7 mm. (Odd numbers, for at round steps a chord may end on the very leg it ought to cross.)
 */
export function chainCrossesItself(profile: Profile, end: "top" | "bottom", job: Job, closely: boolean): boolean {
  const radius = neutralRadius(job);
  const points = chainPoints(profile, end, radius, closely ? 4001 : 211);
  const far = 50 * radius + Math.max(...points.map(({ y }) => Math.abs(y)));
  const [first, last] = [points[0]!, points.at(-1)!];
  const closed = [...points, { x: last.x + far, y: last.y }, { x: last.x + far, y: far }, { x: first.x - far, y: far }, { x: first.x - far, y: first.y }];
  return firstCrossing([closed], closely ? 0 : 1e-7) !== null;
}

/** True where a corner of a profile's chain lies on a leg that does not begin or end there: whether that is a crossing is a matter of rounding. */
export function chainTouchesItself(profile: Profile, end: "top" | "bottom", job: Job): boolean {
  const radius = neutralRadius(job);
  const { start, legs } = asChain(profile, end === "top" ? 1 : -1, radius);
  const corners = [start, ...legs.map((leg) => leg.to)];
  return legs.some((leg, index) => {
    const run = chainPoints({ shape: "free", start: corners[index]!, legs: [leg] }, "top", radius, 4000);
    const there = [...run, ...[...run].reverse()];
    return corners.some(({ x, z }, corner) => corner !== index && corner !== index + 1 && distanceTo([there], { x, y: z }) < 1e-4);
  });
}
