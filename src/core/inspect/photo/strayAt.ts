// How surely do the marks say where a place of the drawing is?

import type { Vec2 } from "../../geometry/vector";
import { standardError } from "../../numeric/leastSquares";
import { type CameraFit, pictured } from "./cameraFit";

/** Of a central difference. */
const NUDGE = 1e-6;

/** How far (in the units of the centred paper) a place strays when every mark strays by a pixel: to first order. */
export function strayAt({ numbers, solved }: CameraFit, at: Vec2): number {
  const slope = (after: Vec2, before: Vec2): Vec2 => ({ x: (after.x - before.x) / (2 * NUDGE), y: (after.y - before.y) / (2 * NUDGE) });
  const [x, y] = [slope(pictured(numbers, { ...at, x: at.x + NUDGE }), pictured(numbers, { ...at, x: at.x - NUDGE })), slope(pictured(numbers, { ...at, y: at.y + NUDGE }), pictured(numbers, { ...at, y: at.y - NUDGE }))];
  const by = x.x * y.y - x.y * y.x;
  const byNumbers = numbers.map((_, k) => {
    const moved = (way: 1 | -1) => pictured(numbers.map((value, i) => (i === k ? value + way * NUDGE : value)), at);
    return slope(moved(1), moved(-1));
  });
  const across = standardError(solved, byNumbers.map((d) => (y.y * d.x - y.x * d.y) / by));
  const up = standardError(solved, byNumbers.map((d) => (x.x * d.y - x.y * d.x) / by));
  return Math.hypot(across, up);
}
