// Where do the openings of a job stand on the wall, and how far do they reach? Only those that left an edge on the piece.

import type { Job, OpeningCut, Piece } from "../../core/index";

export interface OpeningPlace {
  readonly cut: OpeningCut;
  /** Direction of the centre, radians; the offset taken into account. */
  readonly theta: number;
  /** Half the extent along the axis and across it, as seen from outside, mm. */
  readonly halfLength: number;
  readonly halfWidth: number;
  /** Whether extent along the axis is a measure of the outline itself, not of a turned one. */
  readonly square: boolean;
}

/** One place for each wall an opening goes through. */
export function openingPlaces(job: Job, piece: Piece): OpeningPlace[] {
  const cutting = new Set(piece.trimmed.edges.flatMap(({ owner }) => (owner.kind === "cut" ? [owner.id] : [])));
  return job.part.cuts.flatMap((cut) => {
    if (cut.kind !== "opening" || !cutting.has(cut.id)) return [];
    const direction = (cut.direction * Math.PI) / 180;
    const swing = Math.asin(Math.max(-1, Math.min(1, cut.offset / piece.form.cutRadius)));
    const walls = [direction + swing, ...(cut.through === "both" ? [direction + Math.PI - swing] : [])];
    return walls.map((theta) => ({ cut, theta, ...extentOf(cut) }));
  });
}

function extentOf({ outline }: OpeningCut): Pick<OpeningPlace, "halfLength" | "halfWidth" | "square"> {
  if (outline.shape === "round") return { halfLength: outline.diameter / 2, halfWidth: outline.diameter / 2, square: true };
  const { width, length, turn } = outline;
  const angle = (turn * Math.PI) / 180;
  const cos = Math.abs(Math.cos(angle)), sin = Math.abs(Math.sin(angle));
  const square = Math.min(cos, sin) < 1e-9;
  const round = outline.shape === "slot" ? Math.min(width, length) / 2 : 0;
  const w = width / 2 - round, l = length / 2 - round;
  return { halfLength: l * cos + w * sin + round, halfWidth: w * cos + l * sin + round, square };
}
