import { chainPoints } from "./chainPoints";
import { firstCrossing } from "./crossings";
import { neutralRadius } from "./keptElements";
import type { Job, Profile } from "./pipeJob";

/** True where a profile's chain crosses itself by more than rounding: found on 200 chords an arc, every pair of chords tried. */
export function chainCrossesItself(profile: Profile, end: "top" | "bottom", job: Job): boolean {
  const radius = neutralRadius(job);
  const points = chainPoints(profile, end, radius);
  const far = 50 * radius + Math.max(...points.map(({ y }) => Math.abs(y)));
  const [first, last] = [points[0]!, points.at(-1)!];
  const closed = [...points, { x: last.x + far, y: last.y }, { x: last.x + far, y: far }, { x: first.x - far, y: far }, { x: first.x - far, y: first.y }];
  return firstCrossing([closed], 1e-4) !== null;
}
