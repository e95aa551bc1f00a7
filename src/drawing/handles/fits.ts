// At which values does what a handle changes fit something else: level with other cuts, on the axis, at a side, in its own former place?

import type { Cut, Job, Piece } from "../../core/index";
import type { Fit, Grip } from "./grip";
import type { Handle } from "./handles";
import { halfExtent } from "./openingGrips";

export interface Fits {
  readonly across: readonly Fit[];
  readonly along: readonly Fit[];
  readonly size: readonly Fit[];
}

/** All values at which the handle's fields fit. */
export function fitsOf({ grip, clause, fields }: Handle, job: Job, piece: Piece): Fits {
  const cut = job.part.cuts.find(({ id }) => clause === `cut:${id}`);
  const others = job.part.cuts.filter((other) => other.on && other !== cut);
  if (grip.kind === "size") return { across: [], along: [], size: [...(grip.fits ?? []), ...angleFits(grip, others)] };
  const turned = fields[0] === "direction";
  return {
    across: [...(grip.fits?.across ?? []), ...(turned ? directionFits(others) : acrossFits(cut, others, piece))],
    along: [...(grip.fits?.along ?? []), ...alongFits(cut, grip.name, others, job)],
    size: [],
  };
}

function alongFits(cut: Cut | undefined, name: string, others: readonly Cut[], { part }: Job): Fit[] {
  const levels: Fit[] = [
    { value: 0, why: "level", clause: "part" },
    ...(cut ? [{ value: part.length, why: "level", clause: "part" } as const] : []),
    ...others.flatMap((other) => heightsOf(other).map((value): Fit => ({ value, why: "level", clause: `cut:${other.id}` }))),
  ];
  if (cut?.kind !== "opening" || name !== "centre") return levels;
  const { along } = halfExtent(cut.outline);
  return [...levels, ...levels.flatMap(({ value, clause }) => [value - along, value + along].map((touching): Fit => ({ value: touching, why: "tangent", ...(clause ? { clause } : {}) })))];
}

function acrossFits(cut: Cut | undefined, others: readonly Cut[], { form }: Piece): Fit[] {
  const { cutRadius } = form;
  const inLine = others.flatMap((other): Fit[] => {
    const centre = centreOf(other);
    return centre === null || other.direction !== cut?.direction ? [] : [{ value: centre, why: "in-line", clause: `cut:${other.id}` }];
  });
  return [{ value: 0, why: "axis" }, ...inLine, { value: cutRadius, why: "contour" }, { value: -cutRadius, why: "contour" }];
}

function angleFits(grip: Extract<Grip, { kind: "size" }>, others: readonly Cut[]): Fit[] {
  return grip.field === "direction" ? directionFits(others) : [];
}

function directionFits(others: readonly Cut[]): Fit[] {
  const sides = [0, 90, 180, 270, 360].map((value): Fit => ({ value, why: "side" }));
  return [...sides, ...others.map(({ id, direction }): Fit => ({ value: ((direction % 360) + 360) % 360, why: "same-direction", clause: `cut:${id}` }))];
}

/** Heights a cut names. */
function heightsOf(cut: Cut): number[] {
  if (cut.kind !== "shaped") return [cut.height];
  const { profile } = cut;
  switch (profile.shape) {
    case "ogee":
    case "step":
      return [profile.low, profile.high];
    case "free":
      return [profile.start, ...profile.legs.map(({ to }) => to)].map(({ z }) => z);
    default:
      return [profile.height];
  }
}

/** The middle of a cut sideways, where it has one. */
function centreOf(cut: Cut): number | null {
  if (cut.kind === "opening") return cut.offset;
  if (cut.kind === "plane" || cut.profile.shape === "ogee" || cut.profile.shape === "free") return null;
  return cut.profile.shape === "step" ? cut.profile.position : cut.profile.centre;
}
