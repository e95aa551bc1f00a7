// A shaped end as a cutter: its chain, closed beyond the pipe above (top end) or below (bottom end), swept straight across.

import { radians } from "../numeric/angle";
import { type ChainSegment, linesThrough } from "../geometry/chain";
import { selfCrossing } from "../geometry/selfCrossing";
import { distance } from "../geometry/vector";
import type { SweepCutter } from "../cut/cutter";
import { outlineCutter } from "../cut/outlineCutter";
import type { Owner } from "../cut/owner";
import type { Pipe } from "../form/pipe";
import type { End, ShapedCut } from "../job/job";
import type { Problem } from "../job/problem";
import { endChain } from "./endChain";

/** The cutter, or why the profile cannot be used. `field` is the path of the cut in the job. */
export function shapedCutter(cut: ShapedCut, pipe: Pipe, field: string, owner: Owner): SweepCutter | Problem {
  const path = `${field}.profile`;
  const built = endChain(cut.profile, cut.end, pipe, path);
  if (!built.ok) return built.problem;
  const reach = extent(built.chain, pipe);
  const chain = built.sides === "level" ? withLevelRuns(built.chain, reach.across) : built.chain;
  const crossing = selfCrossing(chain, 1e-9 * (pipe.cutRadius + pipe.length));
  if (crossing) {
    const [first, second] = crossing;
    return { code: "profile-crosses-itself", field: path, detail: { first, second } };
  }
  return outlineCutter(closed(chain, cut.end, reach), radians(cut.direction), [-Infinity, Infinity], pipe.cutRadius, owner);
}

/** A place surely outside the pipe and the chain: |x| < across, low < y < high. */
interface Extent {
  readonly across: number;
  readonly low: number;
  readonly high: number;
}

function extent(chain: readonly ChainSegment[], pipe: Pipe): Extent {
  const margin = pipe.length + pipe.cutRadius;
  let across = pipe.cutRadius;
  let low = 0;
  let high = pipe.length;
  for (const segment of chain) {
    const reach = segment.kind === "arc" ? distance(segment.centre, segment.from) : 0;
    for (const { x, y } of segment.kind === "arc" ? [segment.centre] : [segment.from, segment.to]) {
      across = Math.max(across, Math.abs(x) + reach);
      low = Math.min(low, y - reach);
      high = Math.max(high, y + reach);
    }
  }
  return { across: across + margin, low: low - margin, high: high + margin };
}

/** Level runs outwards from both ends, so that the contour elements are surely covered. */
function withLevelRuns(chain: readonly ChainSegment[], across: number): ChainSegment[] {
  const from = chain[0]?.from;
  const to = chain.at(-1)?.to;
  if (!from || !to) return [];
  return [...linesThrough([{ x: -across, y: from.y }, from]), ...chain, ...linesThrough([to, { x: across, y: to.y }])];
}

function closed(chain: readonly ChainSegment[], end: End, { low, high }: Extent): ChainSegment[] {
  const from = chain[0]?.from;
  const to = chain.at(-1)?.to;
  if (!from || !to) return [];
  const y = end === "top" ? high : low;
  return [...chain, ...linesThrough([to, { x: to.x, y }, { x: from.x, y }, from])];
}
