// What the maker should know about a pipe that can be made.

import type { PipePart } from "../job/job";
import type { Problem } from "../job/problem";
import type { Piece } from "./pipePiece";

/** Above this share of the mean diameter a wall is no longer thin: rolled on its neutral line it strays (common practice). */
const THICK = 0.2;

/** Cuts that leave no edge, pieces that fall apart or do not close, walls too thick for a neutral line in the middle. */
export function pipeNotices({ form, trimmed }: Piece, part: PipePart): Problem[] {
  const made = new Set(trimmed.edges.flatMap(({ owner }) => (owner.kind === "cut" ? [owner.index] : [])));
  const notices: Problem[] = part.cuts.flatMap(({ on }, index) => (on && !made.has(index) ? [{ code: "cut-misses" as const, field: `part.cuts.${index}` }] : []));
  if (trimmed.components > 1) notices.push({ code: "separate-pieces", field: "part.cuts", value: trimmed.components });
  if (!trimmed.closedRound) notices.push({ code: "open-round", field: "part.cuts" });
  if (form.thickness > THICK * form.mean) {
    notices.push({ code: "thick-for-diameter", field: "part.thickness", value: form.thickness, max: THICK * form.mean });
  }
  return notices;
}
