// The points that define the profile of a shaped end, in the view that shows it true.

import type { Leg, ShapedCut } from "../../core/index";
import type { Ref } from "../display";
import type { ViewNote } from "../dimension/viewMeasures";
import type { Broadside } from "../view/views";

/** A point with the fields that give its place: how far from the axis and how high; null where it needs no figure. Model mm of the view. */
export interface GivenPoint {
  readonly x: number;
  readonly z: number;
  readonly xField: string | null;
  readonly zField: string | null;
  readonly clause: Ref["clause"];
}

/** Points and, for a vee, its angle in words. A view from behind sees the profile the other way round. */
export function shapedGiven({ id, direction, profile }: ShapedCut, view: Broadside, included: (angle: number) => string): { points: GivenPoint[]; note: ViewNote[] } {
  const way = Math.cos((direction * Math.PI) / 180 - view.facing) < 0 ? -1 : 1;
  const clause = `cut:${id}` as const;
  const point = (x: number, z: number, xField: string | null, zField: string | null): GivenPoint => ({ x: way * x, z, xField, zField, clause });
  switch (profile.shape) {
    case "hollow":
    case "nose":
      return { points: [point(profile.centre, profile.height, "profile.centre", "profile.height")], note: [] };
    case "vee":
      return {
        points: [point(profile.centre, profile.height, "profile.centre", "profile.height")],
        note: [{ text: included(profile.angle), centre: { x: way * profile.centre, y: profile.height }, ref: { clause, field: "profile.angle" } }],
      };
    case "ogee":
    case "step": {
      const rise = profile.rising === "right" ? 1 : -1;
      const at = profile.shape === "step" ? profile.position : 0;
      return {
        points: [point(at - rise * 1e-3, profile.low, null, "profile.low"), point(at, profile.high, profile.shape === "step" ? "profile.position" : null, "profile.high")],
        note: [],
      };
    }
    case "free":
      return {
        points: [point(profile.start.x, profile.start.z, "profile.start.x", "profile.start.z"), ...profile.legs.flatMap((leg, i) => legPoints(leg, i, point))],
        note: [],
      };
  }
}

function legPoints(leg: Leg, index: number, point: (x: number, z: number, xField: string | null, zField: string | null) => GivenPoint): GivenPoint[] {
  const of = (name: string) => `profile.legs.${index}.${name}`;
  const end = point(leg.to.x, leg.to.z, of("to.x"), of("to.z"));
  return "centre" in leg ? [end, point(leg.centre.x, leg.centre.z, of("centre.x"), of("centre.z"))] : [end];
}
