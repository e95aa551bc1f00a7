// A pipe job made: the form, its cutters, the trimmed surface, the stations and the flat pattern.

import { radians } from "../numeric/angle";
import type { Cutter } from "../cut/cutter";
import { type Pipe, roundPipe } from "../form/pipe";
import type { Job } from "../job/job";
import type { Problem } from "../job/problem";
import { type Trimmed, trimPipe } from "../trim/trimmed";
import { criticalPlaces } from "../unroll/criticalPlaces";
import { type Pattern, unrollPipe } from "../unroll/pattern";
import { extremeElement } from "../unroll/extremeElement";
import { type Station, stationsOf } from "../unroll/stations";
import { pipeCutters, shapesEnd } from "./pipeCutters";
import { pipeNotices } from "./pipeNotices";

export interface Piece {
  readonly name: string;
  readonly form: Pipe;
  readonly cutters: readonly Cutter[];
  readonly trimmed: Trimmed;
  readonly stations: readonly Station[];
  readonly pattern: Pattern;
}

export type PipePiece =
  | { readonly ok: true; readonly piece: Piece; readonly notices: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The piece of a pipe job, its edges within `tolerance` (mm, > 0); problems when a cut cannot be made or nothing is left. */
export function pipePiece(job: Job, tolerance: number): PipePiece {
  const { part, development, fabrication } = job;
  const form = roundPipe(part, fabrication);
  const { cutters, problems } = pipeCutters(form, part.cuts);
  if (problems.length > 0) return { ok: false, problems };
  const seam = seamAngle(job, form, cutters);
  const trimmed = trimPipe(form, cutters, seam);
  if (trimmed.components === 0) return { ok: false, problems: [{ code: "nothing-left", field: "part.cuts" }] };
  const towards = fabrication.purpose === "wrap" || development.face === "outside" ? 1 : -1;
  const stations = stationsOf(form, cutters, trimmed.spans, {
    seam, count: development.stations, towards, added: development.extra.map(radians),
    critical: development.critical ? criticalPlaces(cutters, trimmed.edges, seam) : [],
  });
  const pattern = unrollPipe(form, cutters, trimmed, towards, tolerance);
  const piece: Piece = { name: "pipe", form, cutters, trimmed, stations, pattern };
  return { ok: true, piece, notices: pipeNotices(piece, part) };
}

const NAMED = { front: 0, right: Math.PI / 2, back: Math.PI, left: 1.5 * Math.PI } as const;

function seamAngle({ part, development: { seam } }: Job, form: Pipe, cutters: readonly Cutter[]): number {
  if (seam.at === "angle") return radians(((seam.angle % 360) + 360) % 360);
  if (seam.at === "shortest" || seam.at === "longest") {
    return extremeElement(form, cutters.filter((cutter) => shapesEnd(cutter, part.cuts)), seam.at);
  }
  return NAMED[seam.at];
}
