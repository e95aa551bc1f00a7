// All that cuts a pipe: its two square ends, then the job's cuts that are on.

import { radians } from "../numeric/angle";
import type { Cutter } from "../cut/cutter";
import { planeCutter } from "../cut/planeCutter";
import type { Pipe } from "../form/pipe";
import type { Cut } from "../job/job";
import type { Problem } from "../job/problem";
import { openingCutter } from "./openingCutter";
import { shapedCutter } from "./shapedCutter";

export interface PipeCutters {
  readonly cutters: readonly Cutter[];
  readonly problems: readonly Problem[];
}

/** The cutters of a pipe and what is wrong with its cuts; a cut with a problem is left out. */
export function pipeCutters(pipe: Pipe, cuts: readonly Cut[]): PipeCutters {
  const cutters: Cutter[] = [
    { kind: "plane", owner: { kind: "bottom" }, radius: pipe.cutRadius, height: 0, slope: 0, direction: 0, removes: "below" },
    { kind: "plane", owner: { kind: "top" }, radius: pipe.cutRadius, height: pipe.length, slope: 0, direction: 0, removes: "above" },
  ];
  const problems: Problem[] = [];
  cuts.forEach((cut, index) => {
    if (!cut.on) return;
    const made = cutterOf(cut, pipe, index);
    if ("code" in made) problems.push(made);
    else cutters.push(...onSurfaces(made, pipe.cutRadii));
  });
  return { cutters, problems };
}

function cutterOf(cut: Cut, pipe: Pipe, index: number): Cutter | Problem {
  const owner = { kind: "cut", index, id: cut.id } as const;
  if (cut.kind === "opening") return openingCutter(cut, pipe.cutRadius, owner);
  if (cut.kind === "shaped") return shapedCutter(cut, pipe, `part.cuts.${index}`, owner);
  const place = { angle: radians(cut.angle), direction: radians(cut.direction), at: cut.at, height: cut.height };
  return planeCutter(place, pipe.cutRadius, cut.end === "top" ? "above" : "below", owner);
}

/** The cutter as found on each of the surfaces; a square plane is the same on all. */
function onSurfaces(cutter: Cutter, radii: readonly number[]): Cutter[] {
  if (cutter.kind === "plane" && cutter.slope === 0) return [cutter];
  return radii.map((radius) => ({ ...cutter, radius }));
}

/** Whether a cutter shapes an end rather than opening the wall. */
export function shapesEnd(cutter: Cutter, cuts: readonly Cut[]): boolean {
  const { owner } = cutter;
  return owner.kind !== "cut" || cuts[owner.index]?.kind !== "opening";
}
