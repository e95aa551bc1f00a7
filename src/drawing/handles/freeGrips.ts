// The grips of a free profile, in its plane: every corner, the middle of every arc given by its radius, every centre.

import type { FreeProfile, Leg, Point, Vec2 } from "../../core/index";
import { legArcGrip } from "./legArcGrip";
import { type Fit, type Grip, type PointGrip, type Values, freeGrip } from "./grip";

export function freeGrips(profile: FreeProfile): Grip[] {
  const corners = cornersOf(profile);
  return [
    ...corners.map((_, i) => cornerGrip(profile, corners, i)),
    ...profile.legs.flatMap((leg, i): Grip[] => {
      const from = corners[i];
      if (!from) return [];
      if ("radius" in leg) return [legArcGrip(leg, from, i, profile.legs[i - 1], corners[i - 1], profile.legs[i + 1])];
      return "centre" in leg ? [centreGrip(leg, from, i)] : [];
    }),
  ];
}

/** The start and the ends of all legs. */
function cornersOf({ start, legs }: FreeProfile): Vec2[] {
  return [start, ...legs.map(({ to }) => to)].map(({ x, z }) => ({ x, y: z }));
}

/** A corner; the arcs about a centre that meet there keep their centre as nearly as they can. */
function cornerGrip({ legs }: FreeProfile, corners: readonly Vec2[], i: number): PointGrip {
  const path = i === 0 ? "profile.start" : `profile.legs.${i - 1}.to`;
  const point = corners[i] ?? { x: 0, y: 0 };
  const grip = freeGrip(i === 0 ? "start" : `corner-${i}`, `${path}.x`, `${path}.z`, point);
  const put = (to: Vec2): Values => ({
    ...grip.put(to),
    ...centresKept(legs[i - 1], i - 1, corners[i - 1], to),
    ...centresKept(legs[i], i, corners[i + 1], to),
  });
  const beside = [corners[i - 1], corners[i + 1]].filter((corner) => corner !== undefined);
  const fits = (of: (corner: Vec2) => number, why: Fit["why"]): Fit[] => beside.map((corner) => ({ value: of(corner), why }));
  return { ...grip, put, fits: { across: fits(({ x }) => x, "upright"), along: fits(({ y }) => y, "level") } };
}

function centresKept(leg: Leg | undefined, n: number, other: Vec2 | undefined, moved: Vec2): Values {
  if (!leg || !other || !("centre" in leg)) return {};
  return centreValues(n, ontoBisector({ x: leg.centre.x, y: leg.centre.z }, other, moved));
}

/** The centre of an arc moves only on the line of points equally far from both its ends. */
function centreGrip(leg: Extract<Leg, { centre: Point }>, from: Vec2, n: number): PointGrip {
  const point = { x: leg.centre.x, y: leg.centre.z };
  const to = { x: leg.to.x, y: leg.to.z };
  const path = `profile.legs.${n}.centre`;
  return { ...freeGrip(`centre-${n + 1}`, `${path}.x`, `${path}.z`, point), put: (moved) => centreValues(n, ontoBisector(moved, from, to)) };
}

function centreValues(n: number, { x, y }: Vec2): Values {
  return { [`profile.legs.${n}.centre.x`]: x, [`profile.legs.${n}.centre.z`]: y };
}

function ontoBisector(point: Vec2, a: Vec2, b: Vec2): Vec2 {
  const x = b.x - a.x, y = b.y - a.y;
  const past = x * x + y * y > 0 ? ((point.x - (a.x + b.x) / 2) * x + (point.y - (a.y + b.y) / 2) * y) / (x * x + y * y) : 0;
  return { x: point.x - past * x, y: point.y - past * y };
}
