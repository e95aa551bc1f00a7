// What may be wrong with the stretch-out: its diameter, the way it is divided, the number of its spaces.

import { roundPipe } from "../../form/pipe";
import type { Job } from "../../job/job";
import { PENALTY, type Suspicion, type SuspicionFrame, suspicion } from "./suspicion";
import type { JobChange, Work } from "./work";

/** Diameters (mm) nearer than this are one. */
const SAME = 1e-9;

/** Chord stepping, the diameter of another face, radius for diameter, a space too many or too few. */
export function girthSuspicions(frame: SuspicionFrame): Suspicion[] {
  const chords = suspicion(["stepped"], { kind: "chords", done: !frame.stepped }, (work) => ({ ...work, stepped: !frame.stepped }), PENALTY.common);
  return [chords, ...basisSuspicions(frame), ...radiusSuspicions(frame), ...spaceSuspicions(frame)];
}

function basisSuspicions({ job, developed }: SuspicionFrame): Suspicion[] {
  const pipe = roundPipe(job.part, job.fabrication);
  return (["outside", "inside", "mean"] as const).flatMap((used) => {
    const diameter = pipe[used];
    if (!(diameter > 0) || Math.abs(diameter - developed) < SAME) return [];
    return [true, false].map((throughout) =>
      suspicion(["diameter"], { kind: "basis", used, throughout }, (work) => ofDiameter(work, diameter, throughout)));
  });
}

function radiusSuspicions({ developed }: SuspicionFrame): Suspicion[] {
  return ([0.5, 2] as const).flatMap((times) => [true, false].map((throughout) =>
    suspicion(["diameter"], { kind: "radius", times, throughout }, (work) => ofDiameter(work, times * developed, throughout))));
}

/** The work with another diameter: of the piece itself, drawn as a surface without a wall, or of the stretch-out alone. */
function ofDiameter(work: Work, diameter: number, throughout: boolean): Work {
  if (!throughout) return { ...work, girthDiameter: diameter };
  const change = (job: Job): Job => ({
    ...job, part: { ...job.part, diameter, basis: "mean", thickness: 0 }, fabrication: { ...job.fabrication, purpose: "blank" },
  });
  const drawn: JobChange = { key: `diameter ${diameter}`, change };
  return { ...work, changes: [...work.changes, drawn] };
}

function spaceSuspicions({ readings: { count } }: SuspicionFrame): Suspicion[] {
  return ([1, -1] as const).flatMap((by) => [
    suspicion(["spaces"], { kind: "spaces", by, where: "laid" }, (work) => ({ ...work, laid: count + by })),
    suspicion(["spaces"], { kind: "spaces", by, where: "divided" }, (work) => ({ ...work, laid: count + by, spaces: count + by, divisions: count + by })),
    suspicion(["spaces"], { kind: "spaces", by, where: "girth" }, (work) => ({ ...work, laid: count + by, spaces: count + by })),
  ]);
}
