// The part of a chain of points that lies inside a circle about the origin.

import type { Vec2 } from "../../core/index";

/** The chains inside, cut exactly on the circle of this radius. */
export function insideCircle(points: readonly Vec2[], radius: number): Vec2[][] {
  const chains: Vec2[][] = [];
  let open: Vec2[] = [];
  const close = (): void => {
    if (open.length > 1) chains.push(open);
    open = [];
  };
  points.slice(1).forEach((to, i) => {
    const from = points[i] ?? to;
    const part = partInside(from, to, radius);
    if (!part) return close();
    const at = (u: number): Vec2 => ({ x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) });
    if (part.low > 0) close();
    if (open.length === 0) open.push(at(part.low));
    open.push(at(part.high));
    if (part.high < 1) close();
  });
  close();
  return chains;
}

/** The part of a straight piece inside, between two shares of it; null when it stays outside. */
function partInside(from: Vec2, to: Vec2, radius: number): { low: number; high: number } | null {
  const dx = to.x - from.x, dy = to.y - from.y;
  const a = dx * dx + dy * dy;
  const b = from.x * dx + from.y * dy;
  const c = from.x * from.x + from.y * from.y - radius * radius;
  const root = b * b - a * c;
  if (a === 0 || root <= 0) return null;
  const low = Math.max(0, (-b - Math.sqrt(root)) / a), high = Math.min(1, (-b + Math.sqrt(root)) / a);
  return low < high ? { low, high } : null;
}
