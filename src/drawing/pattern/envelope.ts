// How far does an outline reach within a strip of the sheet?

import type { Vec2 } from "../../core/index";

/** Points of closed outlines, each run of points in order. */
export type Outlines = readonly (readonly Vec2[])[];

/**
 * The greatest `along` of the outlines where `across` lies in the strip [from, to]; null where they do not enter it.
 */
export function reachWithin(
  outlines: Outlines, across: (point: Vec2) => number, along: (point: Vec2) => number, strip: readonly [number, number],
): number | null {
  let reach = -Infinity;
  for (const points of outlines) {
    points.forEach((b, i) => {
      const a = points[i - 1];
      if (!a) return;
      const a0 = across(a), b0 = across(b);
      const low = Math.max(strip[0], Math.min(a0, b0)), high = Math.min(strip[1], Math.max(a0, b0));
      if (low > high) return;
      for (const place of [low, high]) {
        const part = a0 === b0 ? [0, 1] : [(place - a0) / (b0 - a0)];
        for (const u of part) reach = Math.max(reach, along(a) + u * (along(b) - along(a)));
      }
    });
  }
  return reach === -Infinity ? null : reach;
}
