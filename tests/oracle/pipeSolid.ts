import type { TopoDS_Shape } from "replicad-opencascadejs";
import type { Cut, Job } from "../../src/core/index";
import type { Frame, Kernel, Outline } from "./kernel";
import { openingOutline, outlineAbove, radians } from "./outline";

/** Radius in mm of the surface the pattern lies on: that of the mean diameter. */
export function surfaceRadius({ diameter, basis, thickness }: Job["part"]): number {
  const mean = { outside: diameter - thickness, inside: diameter + thickness, mean: diameter }[basis];
  return mean / 2;
}

/** The job's pipe as the kernel makes it: the solid cylinder of the surface's radius, less one tool a cut that is on. */
export function pipeSolid(kernel: Kernel, { part }: Job): TopoDS_Shape {
  const radius = surfaceRadius(part);
  const reach = 2 * (part.length + radius);
  return part.cuts.filter(({ on }) => on).reduce((solid, cut) => kernel.cut(solid, tool(kernel, cut, radius, reach)), kernel.cylinder(radius, part.length));
}

function tool(kernel: Kernel, cut: Cut, radius: number, reach: number): TopoDS_Shape {
  const frame = viewFrame(cut.direction);
  if (cut.kind === "opening") return kernel.extrusion(frame, openingOutline(cut), cut.through === "both" ? -2 * radius : 0, 2 * radius);
  if (cut.kind === "plane") return planeTool(kernel, cut, radius, reach);
  return kernel.extrusion(frame, shapedOutline(cut, radius, reach), -2 * radius, 2 * radius);
}

/** The view from a direction about the axis (degrees from the front, -y, anticlockwise seen from above). */
function viewFrame(direction: number): Frame {
  const theta = radians(direction);
  return { origin: [0, 0, 0], right: [Math.cos(theta), Math.sin(theta), 0], up: [0, 0, 1], out: [Math.sin(theta), -Math.cos(theta), 0] };
}

/** A bottom end is the mirror in height of a top end. */
function shapedOutline({ end, profile }: Extract<Cut, { kind: "shaped" }>, radius: number, reach: number): Outline {
  if (end === "top") return outlineAbove(profile, radius, reach);
  const flip = ([x, z]: readonly [number, number]) => [x, -z] as const;
  return outlineAbove(mirrored(profile), radius, reach).map((leg) => (leg.via ? { to: flip(leg.to), via: flip(leg.via) } : { to: flip(leg.to) }));
}

/** The same edge seen in a mirror lying on the base line, so that what lay below it lies above. */
function mirrored(profile: Extract<Cut, { kind: "shaped" }>["profile"]): typeof profile {
  switch (profile.shape) {
    case "hollow":
    case "nose":
    case "vee":
      return { ...profile, height: -profile.height };
    case "ogee":
    case "step":
      return { ...profile, low: -profile.high, high: -profile.low, rising: profile.rising === "left" ? "right" : "left" };
    case "free":
      return {
        ...profile,
        start: { x: profile.start.x, z: -profile.start.z },
        legs: profile.legs.map((leg) => {
          const to = { x: leg.to.x, z: -leg.to.z };
          if ("radius" in leg) return { ...leg, to, turn: opposite(leg.turn) };
          if ("centre" in leg) return { ...leg, to, turn: opposite(leg.turn), centre: { x: leg.centre.x, z: -leg.centre.z } };
          return { to };
        }),
      };
  }
}

function opposite(turn: "left" | "right"): "left" | "right" {
  return turn === "left" ? "right" : "left";
}

/** Seen square to its slope, a plane is a straight line rising to the right. */
function planeTool(kernel: Kernel, cut: Extract<Cut, { kind: "plane" }>, radius: number, reach: number): TopoDS_Shape {
  const slope = Math.tan(radians(cut.angle));
  const onAxis = cut.height + { axis: 0, low: 1, high: -1 }[cut.at] * radius * slope;
  const far = (cut.end === "top" ? 1 : -1) * (reach * (2 + slope) + Math.abs(onAxis));
  const line = [{ to: [-reach, onAxis - slope * reach] }, { to: [reach, onAxis + slope * reach] }] as const;
  return kernel.extrusion(viewFrame(cut.direction - 90), [...line, { to: [reach, onAxis + far] }, { to: [-reach, onAxis + far] }], -2 * radius, 2 * radius);
}
