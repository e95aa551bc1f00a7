// What can be asked of a finished piece at any place: a point of an edge, the kept stretches of an element.

import { wrapTurn } from "../numeric/angle";
import { edgePoint as pointOfEdge, type Edge } from "../trim/edge";
import { type Stretch, stretchesAround } from "../trim/stretches";
import { type RuledElement, ruledElement } from "../unroll/stations";
import type { Piece } from "./pipePiece";

/** The point of an edge at u in [0, 1], exact: θ in radians, z in mm. Edges are smooth in u. */
export function edgePoint(piece: Piece, edge: Edge, u: number): { theta: number; z: number } {
  return pointOfEdge(piece.cutters, edge, u);
}

/**
 * The kept stretches (mm, low to high) just before and just after the element at θ (radians, any turn), in growing θ;
 * they differ only where an edge runs along the element. Exact.
 */
export function keptAt(piece: Piece, theta: number): { before: Stretch[]; after: Stretch[] } {
  return stretchesAround(piece.form, piece.cutters, piece.trimmed.spans, theta);
}

/** The element at a place of the girth (mm from the seam along the stretch-out, any turn), between stations as well as on them. Exact. */
export function elementAt({ form, cutters, trimmed, pattern }: Piece, girth: number): RuledElement {
  const { seam, towards } = pattern;
  return ruledElement(form, cutters, trimmed.spans, { theta: wrapTurn(seam + (towards * girth) / form.radius), girth, towards });
}
