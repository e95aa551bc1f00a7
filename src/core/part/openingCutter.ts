// An opening as a cutter: its outline, as seen from outside, moved straight through the near wall or both.

import { radians } from "../numeric/angle";
import { type ChainSegment, linesThrough } from "../geometry/chain";
import type { Vec2 } from "../geometry/vector";
import type { SweepCutter } from "../cut/cutter";
import { outlineCutter } from "../cut/outlineCutter";
import type { Owner } from "../cut/owner";
import type { OpeningCut, Outline } from "../job/job";

/** The solid an opening takes away, met on the surface of `radius` mm. "near" begins at the axis: it never reaches the far wall. */
export function openingCutter(cut: OpeningCut, radius: number, owner: Owner): SweepCutter {
  const centre = { x: cut.offset, y: cut.height };
  const depth = cut.through === "both" ? ([-Infinity, Infinity] as const) : ([0, Infinity] as const);
  return outlineCutter(openingOutline(cut.outline, centre), radians(cut.direction), depth, radius, owner);
}

/** The closed outline, anticlockwise, in mm, x to the right as seen from outside, y along the axis. */
export function openingOutline(outline: Outline, centre: Vec2): ChainSegment[] {
  if (outline.shape === "round") return circle(centre, outline.diameter / 2);
  const place = placed(centre, radians(outline.turn));
  const [across, along] = [outline.width / 2, outline.length / 2];
  if (outline.shape === "rectangle" || across === along) {
    if (outline.shape === "slot") return circle(centre, across);
    const corners = [[-across, -along], [across, -along], [across, along], [-across, along], [-across, -along]] as const;
    return linesThrough(corners.map(([x, y]) => place(x, y)));
  }
  return slotOutline(place, across, along);
}

/** Half-round ends at the far ends of the longer measure. */
function slotOutline(place: (x: number, y: number) => Vec2, across: number, along: number): ChainSegment[] {
  const end = Math.min(across, along);
  const straight = Math.max(across, along) - end;
  const at = along > across ? place : (x: number, y: number) => place(-y, x);
  const [a, b, c, d] = [at(-end, -straight), at(end, -straight), at(end, straight), at(-end, straight)];
  return [
    { kind: "arc", from: a, to: b, centre: at(0, -straight), anticlockwise: true },
    { kind: "line", from: b, to: c },
    { kind: "arc", from: c, to: d, centre: at(0, straight), anticlockwise: true },
    { kind: "line", from: d, to: a },
  ];
}

function circle(centre: Vec2, radius: number): ChainSegment[] {
  const [left, right] = [{ x: centre.x - radius, y: centre.y }, { x: centre.x + radius, y: centre.y }];
  return [
    { kind: "arc", from: left, to: right, centre, anticlockwise: true },
    { kind: "arc", from: right, to: left, centre, anticlockwise: true },
  ];
}

/** Points turned anticlockwise by `turn` (radians) about the centre; quarter turns exactly. */
function placed(centre: Vec2, turn: number): (x: number, y: number) => Vec2 {
  const quarter = Math.round(turn / (Math.PI / 2));
  const exact = Math.abs(turn - (quarter * Math.PI) / 2) < 1e-12;
  const [cosine, sine] = exact ? [Math.round(Math.cos(turn)), Math.round(Math.sin(turn))] : [Math.cos(turn), Math.sin(turn)];
  return (x, y) => ({ x: centre.x + x * cosine - y * sine, y: centre.y + x * sine + y * cosine });
}
