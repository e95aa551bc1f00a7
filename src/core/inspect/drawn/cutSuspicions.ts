// What may be wrong with the cuts as drawn: their angle, the way they face.

import { degrees, radians } from "../../numeric/angle";
import type { Cut, Job, PlaneCut, ShapedCut } from "../../job/job";
import { PENALTY, type Suspicion, type SuspicionFrame, suspicion } from "./suspicion";
import type { JobChange } from "./work";

/** Degrees: angles of set squares; the stretches between which any angle of a plane or a vee is looked for. */
const SET_SQUARES = [15, 30, 45, 60, 75] as const;
const PLANE_ANGLES = [0, 10, 20, 30, 40, 50, 60, 70, 80] as const;
const VEE_ANGLES = [20, 40, 60, 80, 100, 120, 140, 160] as const;
/** Degrees: a smaller difference is no wrong angle. */
const LEAST = 1;

/** Wrong angles of planes and vees; cuts that face another way, where more than one thing has a direction. */
export function cutSuspicions({ job }: SuspicionFrame): Suspicion[] {
  const cuts = job.part.cuts.filter(({ on }) => on);
  const facing = cuts.filter((cut) => cut.kind !== "plane" || cut.angle > 0);
  const turns = facing.length < 2 ? [] : facing.flatMap(directionSuspicions);
  return [...cuts.flatMap(angleSuspicions), ...turns];
}

/** Whether an angle found is that of the job: a smaller difference is of the hand, no mistake. */
export function isRightAngle({ part: { cuts } }: Job, { cut: id, angle }: { readonly cut: string; readonly angle: number }): boolean {
  const cut = cuts.find((one) => one.id === id);
  const right = cut?.kind === "plane" ? cut.angle : cut && isVee(cut) ? cut.profile.angle : NaN;
  return Math.abs(angle - right) < LEAST;
}

type VeeCut = ShapedCut & { profile: { shape: "vee"; angle: number } };

function angleSuspicions(cut: Cut): Suspicion[] {
  if (cut.kind === "plane") return [...likely(cut, cut.angle, [90 - cut.angle, ...SET_SQUARES]), ...anyOf(cut, PLANE_ANGLES, tangent)];
  if (!isVee(cut)) return [];
  const { angle } = cut.profile;
  return [...likely(cut, angle, [180 - angle, 2 * angle, angle / 2]), ...anyOf(cut, VEE_ANGLES, cotangentOfHalf)];
}

function likely(cut: PlaneCut | VeeCut, right: number, angles: readonly number[]): Suspicion[] {
  const most = cut.kind === "plane" ? 85 : 170;
  const named = [...new Set(angles)].filter((angle) => angle > 0 && angle <= most && Math.abs(angle - right) >= LEAST);
  return named.map((angle) => drawnAt(cut, angle, PENALTY.usual));
}

/** Any angle: heights run straight with `slopeOf` it, so a piece between two others is a blend of them. */
function anyOf(cut: PlaneCut | VeeCut, angles: readonly number[], slopeOf: SlopeOf): Suspicion[] {
  return angles.slice(1).map((to, i) => {
    const from = angles[i] ?? to;
    const [low, high] = [slopeOf.slope(from), slopeOf.slope(to)];
    return {
      ...drawnAt(cut, from, PENALTY.found), free: "blend" as const, changeTo: drawnAt(cut, to, PENALTY.found).change,
      mistake: (found: number) => ({ kind: "angle" as const, cut: cut.id, angle: slopeOf.angle(low + found * (high - low)) }),
    };
  });
}

interface SlopeOf {
  readonly slope: (angle: number) => number;
  readonly angle: (slope: number) => number;
}

const tangent: SlopeOf = { slope: (angle) => Math.tan(radians(angle)), angle: (slope) => degrees(Math.atan(slope)) };
const cotangentOfHalf: SlopeOf = { slope: (angle) => 1 / Math.tan(radians(angle / 2)), angle: (slope) => degrees(2 * Math.atan(1 / slope)) };

/** The suspicion that a cut was drawn at an angle (degrees). */
export function drawnAt(cut: Pick<Cut, "id">, angle: number, penalty: number): Suspicion {
  const change = changeOf(cut, `angle ${angle}`, (one) => {
    if (one.kind === "plane") return { ...one, angle };
    return isVee(one) ? { ...one, profile: { ...one.profile, angle } } : one;
  });
  return suspicion([`angle ${cut.id}`], { kind: "angle", cut: cut.id, angle }, (work) => ({ ...work, changes: [...work.changes, change] }), penalty);
}

function directionSuspicions(cut: Cut): Suspicion[] {
  return ([180, 90, 270] as const).map((turn) => {
    const change = changeOf(cut, `turned ${turn}`, (one) => ({ ...one, direction: one.direction + turn }));
    return suspicion([`direction ${cut.id}`], { kind: "direction", cut: cut.id, turn }, (work) => ({ ...work, changes: [...work.changes, change] }));
  });
}

function changeOf({ id }: Pick<Cut, "id">, what: string, turned: (cut: Cut) => Cut): JobChange {
  const change = (job: Job): Job => ({ ...job, part: { ...job.part, cuts: job.part.cuts.map((one) => (one.id === id ? turned(one) : one)) } });
  return { key: `${id} ${what}`, change };
}

function isVee(cut: Cut): cut is VeeCut {
  return cut.kind === "shaped" && cut.profile.shape === "vee";
}
