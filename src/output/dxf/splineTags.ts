// Cubics joined end to end as one spline of the format: degree 3, every joint a knot of multiplicity 3, so that the curve is the same
// to the last digit, corners and all.

import type { Cubic } from "../../core/index";
import { place3 } from "./entity";
import type { Tag } from "./tag";

/** Planar, no more: the curve is clamped at both ends also where these meet. */
const PLANAR = 8;

/** The tags of a spline entity; each cubic begins where the one before ends. */
export function splineTags(cubics: readonly Cubic[], scale: number): Tag[] {
  const points = cubics.flatMap(({ from, c1, c2, to }, i) => [...(i === 0 ? [from] : []), c1, c2, to]);
  const knots = [0, ...Array.from({ length: cubics.length + 1 }, (_, i) => [i, i, i]).flat(), cubics.length];
  return [
    [100, "AcDbSpline"], [210, "0.0"], [220, "0.0"], [230, "1.0"], [70, PLANAR], [71, 3], [72, knots.length], [73, points.length], [74, 0],
    ...knots.map((knot): Tag => [40, knot]), ...points.flatMap((point) => place3(10, point, scale)),
  ];
}
