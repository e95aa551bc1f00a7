import type { Vec2 } from "../../src/core/index";
import type { Profile } from "./pipeJob";
import { arcCentre, asChain } from "./profileChain";

/** The chain as points, so many steps on each arc; x to the right, y for height. */
export function chainPoints(profile: Profile, end: "top" | "bottom", pipeRadius: number, steps = 200): Vec2[] {
  const { start, legs } = asChain(profile, end === "top" ? 1 : -1, pipeRadius);
  const points: Vec2[] = [{ x: start.x, y: start.z }];
  for (const leg of legs) {
    const from = points.at(-1)!;
    if ("turn" in leg) {
      const centre = arcCentre({ x: from.x, z: from.y }, leg);
      const size = Math.hypot(from.x - centre.x, from.y - centre.z);
      const way = leg.turn === "left" ? 1 : -1;
      const begin = Math.atan2(from.y - centre.z, from.x - centre.x);
      let sweep = (Math.atan2(leg.to.z - centre.z, leg.to.x - centre.x) - begin) * way;
      if (sweep <= 1e-12) sweep += 2 * Math.PI;
      for (let step = 1; step < steps; step += 1) {
        const angle = begin + (way * sweep * step) / steps;
        points.push({ x: centre.x + size * Math.cos(angle), y: centre.z + size * Math.sin(angle) });
      }
    }
    points.push({ x: leg.to.x, y: leg.to.z });
  }
  return points;
}
