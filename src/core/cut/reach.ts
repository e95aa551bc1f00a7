// An outline of lines and arcs as reaches: stretches with one height at each t.

import { TURN } from "../numeric/angle";
import { type Arc, type Line, arcSweep } from "../geometry/segment";
import type { Reach } from "./cutter";

/** The reaches of a chain of lines and arcs in (t, z). Upright lines have none. */
export function reachesOf(outline: readonly (Line | Arc)[]): Reach[] {
  return outline.flatMap((segment) => (segment.kind === "line" ? lineReach(segment) : arcReaches(segment)));
}

function lineReach({ from, to }: Line): Reach[] {
  if (from.x === to.x) return [];
  const [a, b] = from.x < to.x ? [from, to] : [to, from];
  const slope = (b.y - a.y) / (b.x - a.x);
  return [{ kind: "line", from: a.x, to: b.x, z: a.y - slope * a.x, slope }];
}

/** Cut the arc at its two places of upright tangent. */
function arcReaches(arc: Arc): Reach[] {
  const { start, sweep, radius } = arcSweep(arc);
  const low = Math.min(start, start + sweep);
  const high = Math.max(start, start + sweep);
  const breaks = [low, high];
  for (let k = Math.ceil(low / Math.PI); k * Math.PI <= high; k++) breaks.push(k * Math.PI);
  breaks.sort((a, b) => a - b);
  const place = (angle: number): number => {
    if (Math.abs(angle - start) < 1e-12) return arc.from.x;
    if (Math.abs(angle - start - sweep) < 1e-12) return arc.to.x;
    return arc.centre.x + radius * (Math.round(angle / Math.PI) % 2 === 0 ? 1 : -1);
  };
  return breaks.slice(1).flatMap((end, i) => {
    const begin = breaks[i] ?? end;
    if (end - begin < 1e-12) return [];
    const middle = (((begin + end) / 2) % TURN + TURN) % TURN;
    const [t0, t1] = [place(begin), place(end)];
    return [{
      kind: "arc" as const, from: Math.min(t0, t1), to: Math.max(t0, t1),
      t: arc.centre.x, z: arc.centre.y, radius, side: middle < Math.PI ? (1 as const) : (-1 as const),
    }];
  });
}
