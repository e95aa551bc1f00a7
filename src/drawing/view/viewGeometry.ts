// The lines of one view in model mm, before anything is placed or lettered: broadside in (sideways, height) of the upright pipe,
// end-on in the plane of the circle. The surface drawn is the one on which the cuts are placed: there a cut seen from its side is drawn true,
// and every element has the heights of its station in the pattern.

import { type Edge, type Owner, type Piece, type Segment, edgePoint, keptAt } from "../../core/index";
import { chainsOf } from "./chain";
import { contourStretches, unionOf } from "./contour";
import type { Ref } from "../display";
import { criticalTurns, edgeRuns } from "./edgeRuns";
import type { PenName } from "../pens";
import { standingArcs } from "./standingArcs";
import { traceCurve } from "./trace";
import { type Broadside, type EndOn, sheetAngle, sideways } from "./views";

export interface ViewLine {
  readonly pen: PenName;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
  readonly ref: Ref;
}

/** Relative to the size of the piece: lines closer than this coincide. */
const COINCIDE = 1e-6;

/** Greatest distance of a drawn view edge from the true one, model mm. */
const TOLERANCE = 0.005;

/** Elements nearer to the contour than this (sine) are drawn by the contour. */
const AT_CONTOUR = 1e-9;

/** All lines of a view of the piece; hidden edges that fall on visible ones are left out. */
export function viewGeometry(piece: Piece, view: Broadside | EndOn): ViewLine[] {
  return view.kind === "end-on" ? circleLines(piece, view) : broadsideLines(piece, view);
}

function broadsideLines(piece: Piece, view: Broadside): ViewLine[] {
  const { edges } = piece.trimmed;
  const { cutRadius: radius, length } = piece.form;
  const noise = COINCIDE * Math.max(length, 2 * radius);
  const turns = criticalTurns(piece, view);
  const groups = new Map<string, { pen: PenName; owner: Owner; pieces: Segment[][] }>();
  for (const edge of edges) {
    if (edge.owner.kind === "seam" || runsOnContour(view, edge)) continue;
    for (const { from, to, sight } of edgeRuns(piece, view, edge, turns, noise)) {
      if (sight === "covered") continue;
      const pen: PenName = sight === "visible" ? "visible edge" : "hidden edge";
      const key = `${pen}/${ownerKey(edge.owner)}`;
      const group = groups.get(key) ?? { pen, owner: edge.owner, pieces: [] };
      groups.set(key, group);
      const point = (u: number) => {
        const { theta, z } = edgePoint(piece, edge, from + u * (to - from));
        return { x: sideways(view, radius, theta), y: z };
      };
      group.pieces.push(traceCurve(point, TOLERANCE));
    }
  }
  const lines = [...groups.values()].flatMap(({ pen, owner, pieces }) =>
    chainsOf(pieces, noise).map((chain) => ({ pen, ref: refOf(owner), ...chain })));
  return [...baseLine(piece), ...contourLines(piece, view), ...lines, ...seamLine(piece, view)];
}

/** The base line from which heights are measured, where the bottom end has left it. */
function baseLine({ form: { cutRadius: radius }, trimmed: { edges } }: Piece): ViewLine[] {
  const stands = edges.filter(({ owner }) => owner.kind === "bottom").reduce((sum, { from, to }) => sum + Math.abs(to - from), 0);
  if (stands > 2 * Math.PI - 1e-6) return [];
  return [{
    pen: "stretch-out", closed: false, ref: { clause: "part" },
    segments: [{ kind: "line", from: { x: -radius, y: 0 }, to: { x: radius, y: 0 } }],
  }];
}

function contourLines(piece: Piece, view: Broadside): ViewLine[] {
  const { cutRadius: radius } = piece.form;
  return contourStretches(piece, view).map(({ side, from, to }) => ({
    pen: "contour", closed: false, ref: { clause: "part" },
    segments: [{ kind: "line", from: { x: side * radius, y: from }, to: { x: side * radius, y: to } }],
  }));
}

/** The seam where it lies on the wall towards the viewer, inside the contour. */
function seamLine(piece: Piece, view: Broadside): ViewLine[] {
  const { seam } = piece.pattern;
  if (Math.cos(seam - view.facing) <= 1e-6) return [];
  const x = sideways(view, piece.form.cutRadius, seam);
  const { before, after } = keptAt(piece, seam);
  return unionOf([...before, ...after]).map(({ from, to }) => ({
    pen: "seam", closed: false, ref: { clause: "seam" },
    segments: [{ kind: "line", from: { x, y: from }, to: { x, y: to } }],
  }));
}

/** Every edge of a thin pipe falls on the circle: arcs where material stands, a thin line where it is cut away altogether. */
function circleLines(piece: Piece, view: EndOn): ViewLine[] {
  const { cutRadius: radius } = piece.form;
  const at = (theta: number) => {
    const angle = sheetAngle(view, theta);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  };
  return standingArcs(piece).map(({ from, to, standing }) => ({
    pen: standing ? "visible edge" : "projection", closed: to - from >= 2 * Math.PI, ref: { clause: "part" },
    segments: [{ kind: "arc", from: at(from), to: at(to), centre: { x: 0, y: 0 }, anticlockwise: view.sense === 1 }],
  }));
}

function runsOnContour(view: Broadside, edge: Edge): boolean {
  return edge.face === null && Math.abs(Math.cos(edge.from - view.facing)) < AT_CONTOUR;
}

function ownerKey(owner: Owner): string {
  return owner.kind === "cut" ? `cut:${owner.id}` : owner.kind;
}

/** The clause of the job an edge belongs to: square ends belong to the pipe itself. */
export function refOf(owner: Owner): Ref {
  if (owner.kind === "cut") return { clause: `cut:${owner.id}` };
  return { clause: owner.kind === "seam" ? "seam" : "part" };
}
