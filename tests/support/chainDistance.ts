import type { Vec2 } from "../../src/core/index";

/** Least distance of a point from the straight lines through the points, by plain comparison of them all. */
export function chainDistance(points: readonly Vec2[], { x, y }: Vec2): number {
  let least = Infinity;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const square = dx * dx + dy * dy;
    const along = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / square));
    least = Math.min(least, Math.hypot(x - a.x - along * dx, y - a.y - along * dy));
  }
  return least;
}
