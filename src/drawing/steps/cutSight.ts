// In which view is a cut given, so that its points are found there? A slanting plane where it is seen as a line, a shaped end where
// its profile is seen true; both are squarely to or along the line of sight.

import type { Cut, Job, Piece, Station } from "../../core/index";
import type { Broadside, EndOn, ViewName, Views } from "../view/views";

/** Least cosine or sine that is not nothing. */
const NOTHING = 1e-6;

/** The two views that see the pipe from its side: the front view, and the one that is not the circle. */
export function broadsideNames({ top }: Views): readonly ["front", ViewName] {
  return ["front", top.kind === "end-on" ? "side" : "top"];
}

/** The view that sees the pipe along its axis, as a circle. */
export function circleName({ top }: Views): ViewName {
  return top.kind === "end-on" ? "top" : "side";
}

/** Whether a view shows an end cut as the line it is given by; an opening is never one. */
export function isGivenIn(cut: Cut, view: Broadside | EndOn): boolean {
  if (view.kind === "end-on" || cut.kind === "opening") return false;
  const turned = (cut.direction * Math.PI) / 180 - view.facing;
  if (cut.kind === "shaped") return Math.abs(Math.sin(turned)) < NOTHING;
  return cut.angle === 0 || Math.abs(Math.cos(turned)) < NOTHING;
}

/** The view that gives an end cut: the front view before the other; null when neither does. */
export function givingView(cut: Cut, views: Views): ViewName | null {
  return broadsideNames(views).find((name) => isGivenIn(cut, views[name])) ?? null;
}

/** A point in which an element ends or passes into an opening. */
export interface EndPoint {
  readonly end: "bottom" | "top";
  /** Height, mm. */
  readonly z: number;
  /** The cut it lies on; null on a square end. */
  readonly cut: Cut | null;
}

/** Heights closer than this, mm, are one. */
const SAME = 1e-6;

/** All points in which the element at a station ends, from the base up; both levels where an edge runs along it. */
export function endPoints(job: Job, piece: Piece, { before, after }: Pick<Station, "before" | "after">): EndPoint[] {
  const ofFace = (index: number): Cut | null => {
    const owner = piece.cutters[index]?.owner;
    return owner?.kind === "cut" ? (job.part.cuts.find(({ id }) => id === owner.id) ?? null) : null;
  };
  const points = [...before, ...after].flatMap(({ from, to, fromFace, toFace }): EndPoint[] => [
    { end: "bottom", z: from, cut: ofFace(fromFace.cutter) }, { end: "top", z: to, cut: ofFace(toFace.cutter) },
  ]);
  return points
    .filter(({ z, cut }, i) => points.findIndex((other) => Math.abs(other.z - z) < SAME && other.cut === cut) === i)
    .sort((a, b) => a.z - b.z);
}
