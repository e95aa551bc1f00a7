import { neutralRadius, radians } from "./keptElements";
import { chainPoints } from "./chainPoints";
import type { Cut, Job, OpeningCut, ShapedCut } from "./pipeJob";

/**
 * True where the point of the surface at `theta` (radians from the front) and height `z` is left by every cut of the job. Plain inequalities in space;
 * a second reading of the job's meaning, against which the element-by-element reading is checked. On an edge itself either answer may come.
 */
export function isKept(job: Job, theta: number, z: number): boolean {
  const radius = neutralRadius(job);
  if (z < 0 || z > job.part.length) return false;
  const point = { x: radius * Math.sin(theta), y: -radius * Math.cos(theta), z };
  return job.part.cuts.every((cut) => !cut.on || !isRemoved(cut, point, radius));
}

interface Spot { readonly x: number; readonly y: number; readonly z: number }

function isRemoved(cut: Cut, point: Spot, radius: number): boolean {
  const direction = radians(cut.direction);
  /** Distance towards the viewer who stands at the cut's direction, and to this viewer's right. */
  const towards = point.x * Math.sin(direction) - point.y * Math.cos(direction);
  const right = point.x * Math.cos(direction) + point.y * Math.sin(direction);
  if (cut.kind === "plane") {
    const slope = Math.tan(radians(cut.angle));
    const axis = cut.height + (cut.at === "axis" ? 0 : cut.at === "low" ? radius * slope : -radius * slope);
    const above = point.z - (axis + slope * towards);
    return cut.end === "top" ? above > 0 : above < 0;
  }
  if (cut.kind === "shaped") return isBeyondProfile(cut, right, point.z, radius);
  if (cut.through === "near" && towards <= 0) return false;
  return isInOutline(cut, right - cut.offset, point.z - cut.height);
}

function isInOutline({ outline }: OpeningCut, x: number, z: number): boolean {
  if (outline.shape === "round") return Math.hypot(x, z) < outline.diameter / 2;
  const turn = radians(outline.turn);
  const across = x * Math.cos(turn) + z * Math.sin(turn);
  const along = z * Math.cos(turn) - x * Math.sin(turn);
  if (outline.shape === "rectangle") return Math.abs(across) < outline.width / 2 && Math.abs(along) < outline.length / 2;
  const round = Math.min(outline.width, outline.length) / 2;
  const beyondWide = Math.max(0, Math.abs(across) - (outline.width / 2 - round));
  const beyondLong = Math.max(0, Math.abs(along) - (outline.length / 2 - round));
  return Math.hypot(beyondWide, beyondLong) < round;
}

function isBeyondProfile(cut: ShapedCut, x: number, z: number, radius: number): boolean {
  const up = cut.end === "top" ? 1 : -1;
  const { profile } = cut;
  if (profile.shape === "hollow") {
    const { centre, height } = profile;
    const middle = height + up * profile.radius;
    return Math.hypot(x - centre, z - middle) < profile.radius || up * (z - middle) > 0;
  }
  if (profile.shape === "nose") {
    const middle = profile.height - up * profile.radius;
    return up * (z - middle) > 0 && Math.hypot(x - profile.centre, z - middle) > profile.radius;
  }
  if (profile.shape === "step") return up * (z - (profile.rising === "right" === x > profile.position ? profile.high : profile.low)) > 0;
  if (profile.shape === "vee") return up * (z - profile.height) * Math.tan(radians(profile.angle / 2)) > Math.abs(x - profile.centre);
  return up === 1 === isOnLeft(cut, x, z, radius);
}

/** By the total turning of the view from the point along the chain: half a turn or more against the clock where the point lies on the chain's left. */
function isOnLeft(cut: ShapedCut, x: number, z: number, radius: number): boolean {
  const chain = chainPoints(cut.profile, cut.end, radius);
  const far = 1e6 * radius;
  const [first, end] = [chain[0]!, chain.at(-1)!];
  const path = [{ x: first.x - far, y: first.y }, ...chain, { x: end.x + far, y: end.y }];
  let turned = 0;
  for (let index = 1; index < path.length; index += 1) {
    const [a, b] = [path[index - 1]!, path[index]!];
    const [ax, ay, bx, by] = [a.x - x, a.y - z, b.x - x, b.y - z];
    turned += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
  return turned > 0;
}
