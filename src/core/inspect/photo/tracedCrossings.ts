// Where does a line traced by hand cross each element?

import type { Vec2 } from "../../geometry/vector";

/** For every x the height at which the line through the points crosses it: the mean of all crossings, null where there is none. */
export function tracedCrossings(points: readonly Vec2[], xs: readonly number[]): (number | null)[] {
  return xs.map((x) => {
    const heights = points.slice(1).flatMap((b, i): number[] => {
      const a = points[i] ?? b;
      if (a.x === b.x || (x - a.x) * (x - b.x) > 0) return [];
      return [a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y)];
    });
    return heights.length === 0 ? null : heights.reduce((sum, height) => sum + height, 0) / heights.length;
  });
}
