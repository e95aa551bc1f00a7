// The places on one element where edges end, from low to high: heights within noise of each other are one place.

import { ROOT_NOISE } from "../numeric/tolerance";
import { type Pipe, pipeSize } from "../form/pipe";
import type { Cutter, FaceRef } from "../cut/cutter";
import { directionAlong } from "./edge";
import type { Link } from "./links";
import type { Stretch } from "./stretches";

/** An edge that leaves or reaches a node. */
export interface Spoke {
  readonly link: Link;
  readonly leaving: boolean;
}

/** A place where edges end. Spokes to the right and left are listed from low to high. */
export interface Node {
  readonly z: number;
  readonly right: Spoke[];
  readonly left: Spoke[];
  up: Spoke | null;
  down: Spoke | null;
}

interface Height {
  readonly z: number;
  readonly face: FaceRef;
}

/**
 * The nodes of the element at θ (radians) for the stretches that end and begin there. Of several heights in one place
 * that of the least steep face is taken: it is known best.
 */
export function nodesOf(pipe: Pipe, cutters: readonly Cutter[], theta: number, stretches: readonly Stretch[]): Node[] {
  const noise = ROOT_NOISE * pipeSize(pipe);
  const heights = stretches.flatMap(({ from, to, fromFace, toFace }): Height[] => [{ z: from, face: fromFace }, { z: to, face: toFace }]);
  heights.sort((a, b) => a.z - b.z);
  const clusters: Height[][] = [];
  for (const height of heights) {
    const cluster = clusters.at(-1);
    const last = cluster?.at(-1);
    if (cluster && last && height.z - last.z <= noise) cluster.push(height);
    else clusters.push([height]);
  }
  return clusters.map((cluster) => ({ z: bestKnown(pipe, cutters, theta, cluster), right: [], left: [], up: null, down: null }));
}

function bestKnown(pipe: Pipe, cutters: readonly Cutter[], theta: number, cluster: readonly Height[]): number {
  let best = cluster[0]?.z ?? 0;
  if (cluster.every(({ z }) => z === best)) return best;
  let least = Infinity;
  for (const { z, face } of cluster) {
    const { ds, dz } = directionAlong(pipe, cutters, face, theta, 1);
    const steepness = Math.abs(dz) / Math.hypot(ds, dz);
    if (steepness < least) {
      least = steepness;
      best = z;
    }
  }
  return best;
}

/** The node nearest to a height. @throws RangeError when there are no nodes. */
export function nodeAt(nodes: readonly Node[], z: number): Node {
  let best = nodes[0];
  for (const node of nodes) if (best && Math.abs(node.z - z) < Math.abs(best.z - z)) best = node;
  if (!best) throw new RangeError("no nodes");
  return best;
}

/** The edge a loop takes next after arriving by `link`: the sharpest turn to the left, found by order alone. */
export function following(link: Link): Link {
  const { right, left, up, down } = link.end;
  const anticlockwise = [...right, ...(up ? [up] : []), ...[...left].reverse(), ...(down ? [down] : [])];
  const arrived = anticlockwise.findIndex((spoke) => spoke.link === link && !spoke.leaving);
  for (let turn = 1; turn <= anticlockwise.length; turn++) {
    const spoke = anticlockwise[(arrived - turn + anticlockwise.length) % anticlockwise.length];
    if (spoke?.leaving) return spoke.link;
  }
  throw new RangeError("an edge leads nowhere");
}
