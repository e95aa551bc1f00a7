// The grips of a slanting end, in the upright plane through its highest and lowest point: x towards the highest.

import { type PlaneCut, type Vec2, degrees, radians } from "../../core/index";
import { type Grip, alongGrip, within } from "./grip";

const STEEPEST = 89.9;

/** The height where the job gives it, and the tilt at the other end, the high one when the height is that of the axis. `reach` bounds its rise, mm. */
export function planeGrips(cut: PlaneCut, radius: number, reach: number): Grip[] {
  const held: Vec2 = { x: { axis: 0, low: -radius, high: radius }[cut.at], y: cut.height };
  const way = cut.at === "high" ? -1 : 1;
  const arm = cut.at === "axis" ? radius : 2 * radius;
  const pointFor = (angle: number): Vec2 => {
    const slope = Math.tan(radians(angle));
    const run = arm * slope > reach ? reach / slope : arm;
    return { x: held.x + way * run, y: held.y + way * run * slope };
  };
  return [
    alongGrip("height", "height", held),
    {
      kind: "size", name: "angle", field: "angle", quantity: "angle", value: cut.angle, point: pointFor(cut.angle), pointFor,
      valueAt: ({ x, y }) => within(degrees(Math.atan2(way * (y - held.y), Math.max(way * (x - held.x), 0))), 0, STEEPEST),
      put: (angle) => ({ angle }),
    },
  ];
}
