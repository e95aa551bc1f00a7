// Angles found in several ways, each place once.

import { TURN } from "./angle";

/**
 * The angles (radians in [0, 2π)) ascending; of those nearer than `noise` (radians, > 0) to each other, a chain of such
 * neighbours included, only the earliest listed is kept, so list the exact ones first. 0 and 2π are one place.
 */
export function distinctAngles(angles: readonly number[], noise: number): number[] {
  const order = angles.map((_, i) => i).sort((i, j) => (angles[i] ?? 0) - (angles[j] ?? 0));
  const clusters: number[][] = [];
  let last = -Infinity;
  for (const i of order) {
    const angle = angles[i] ?? 0;
    const cluster = clusters.at(-1);
    if (cluster && angle - last < noise) cluster.push(i);
    else clusters.push([i]);
    last = angle;
  }
  const first = clusters[0];
  if (first && clusters.length > 1 && (angles[first[0] ?? 0] ?? 0) + TURN - last < noise) {
    first.push(...(clusters.pop() ?? []));
  }
  return clusters.map((cluster) => angles[Math.min(...cluster)] ?? 0).sort((a, b) => a - b);
}
