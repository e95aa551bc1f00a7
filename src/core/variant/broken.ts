// Does a piece keep to what is asked of every variant?

import type { Keeps } from "../job/exerciseChoices";
import type { Job } from "../job/job";
import type { Piece } from "../part/pipePiece";
import type { Edge } from "../trim/edge";

/** What a variant can fail: it cannot be made at all, or one of what it must keep to. */
export type Constraint = "makeable" | "inside" | "ordinate" | "sheet";

/** mm by which a pattern may be too large for its sheet, which rounding alone can make. */
const ROUNDING = 1e-9;

/** Radians of an end left square where the highest point of a cut only touches it: the square root of rounding. */
const TOUCHING = 1e-6;

/** The first thing the piece does not keep to; null when it keeps to all. */
export function broken(job: Job, piece: Piece, { inside, ordinate, sheet }: Keeps): Exclude<Constraint, "makeable"> | null {
  if (inside && !staysInside(job, piece)) return "inside";
  if (ordinate > 0 && piece.stations.some(({ bottom, top }) => bottom === null || top === null || top - bottom < ordinate)) return "ordinate";
  if (sheet && !fits(piece, sheet)) return "sheet";
  return null;
}

function staysInside({ part: { cuts } }: Job, { trimmed: { edges, loops, components, closedRound } }: Piece): boolean {
  if (components !== 1 || !closedRound) return false;
  const made = cuts.filter(({ on }) => on);
  const square = (["top", "bottom"] as const).filter((end) => edges.some(({ owner, from, to }) => owner.kind === end && Math.abs(to - from) > TOUCHING));
  if (made.some((cut) => cut.kind !== "opening" && square.includes(cut.end))) return false;
  const leavesAnEdge = ({ id }: { id: string }) => edges.some(({ owner }) => owner.kind === "cut" && owner.id === id);
  if (!made.every(leavesAnEdge)) return false;
  const openings = new Set(made.flatMap((cut) => (cut.kind === "opening" ? [cut.id] : [])));
  return loops.every((loop) => loop.every((edge, i) => standsAlone(edge, loop[(i + 1) % loop.length] ?? edge, openings)));
}

/** Whether an edge of an opening is followed by one of its own or by the seam, and the other way round. */
function standsAlone(a: Edge, b: Edge, openings: ReadonlySet<string>): boolean {
  const openingOf = ({ owner }: Edge) => (owner.kind === "cut" && openings.has(owner.id) ? owner.id : null);
  return a.owner.kind === "seam" || b.owner.kind === "seam" || openingOf(a) === openingOf(b);
}

function fits({ pattern: { girth, height } }: Piece, { width, height: room }: { width: number; height: number }): boolean {
  const tall = height[1] - height[0];
  const within = (across: number, up: number) => girth <= across + ROUNDING && tall <= up + ROUNDING;
  return within(width, room) || within(room, width);
}
