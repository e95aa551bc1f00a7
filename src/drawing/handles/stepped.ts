// What does a step of a handle by the keys ask for?

import type { Vec2 } from "../../core/index";
import type { Values } from "./grip";
import type { Handle } from "./handles";

/** How far a step goes in each quantity: mm, degrees. */
export interface StepSizes {
  readonly length: number;
  readonly angle: number;
}

/** The new values for a step to the right, left, up or down on the sheet (`way`, a unit vector). A handle of one field takes right and up for more. */
export function stepped({ grip, sight, at }: Handle, way: Vec2, sizes: StepSizes): Values {
  const more = way.x + way.y > 0 ? 1 : -1;
  if (grip.kind === "size") return grip.put(clean(grip.value + more * sizes[grip.quantity]));
  const seen = sight.fromSheet({ x: at.x + way.x, y: at.y + way.y });
  const by = { x: seen.x - grip.point.x, y: seen.y - grip.point.y };
  const both = grip.across !== null && grip.along !== null;
  const axis = both ? (Math.abs(by.x) > Math.abs(by.y) ? "x" : "y") : grip.across ? "x" : "y";
  const coordinate = axis === "x" ? grip.across : grip.along;
  if (!coordinate) return {};
  const sign = both ? Math.sign(by[axis]) : more;
  return grip.put({ ...grip.point, [axis]: clean(grip.point[axis] + sign * sizes[coordinate.quantity]) });
}

/** Free of the rounding noise of adding up. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
