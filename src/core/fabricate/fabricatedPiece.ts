// A developed piece made ready for the shop.

import { mirroredChain } from "../geometry/mirrored";
import { pathLength } from "../geometry/path";
import type { FabricationChoices } from "../job/fabricationChoices";
import type { Job } from "../job/job";
import type { Problem } from "../job/problem";
import type { Piece } from "../part/pipePiece";
import type { Loop } from "../unroll/pattern";
import { type Allowance, allowancesOf } from "./allowance";
import { type Blank, blankOf } from "./blank";
import { type Contour, type Refusal, contoursOf } from "./contour";
import { stripMarks } from "./edgeMarks";
import { endMatchMarks, quarterMarks, stationMarks } from "./elementMarks";
import type { Mark } from "./mark";
import { withoutSpecks } from "./place";
import { withRootGap } from "./rootGap";
import { seamFolds } from "./seamFolds";
import type { Layout } from "./sheetElement";
import { arrowMarks, seamMatchMarks } from "./sheetMarks";
import { type StationHeights, stationHeights } from "./stationHeights";

export interface FabricatedPiece {
  readonly piece: Piece;
  readonly name: string;
  readonly purpose: "blank" | "wrap";
  /** The face of the sheet that looks up. */
  readonly face: "inside" | "outside";
  readonly hand: "described" | "opposite";
  readonly quantity: number;
  /** The pattern without allowances, the root gap taken off. Pattern coordinates, mm. */
  readonly net: readonly Loop[];
  readonly contours: readonly Contour[];
  readonly marks: readonly Mark[];
  /** What was added; what could not be is not among them. */
  readonly allowances: readonly Allowance[];
  readonly heights: readonly StationHeights[];
  /** A template has no thickness and no mass. */
  readonly blank: Blank;
}

/** Segments shorter than this many mm mark a point, no edge. */
const SPECK = 1e-5;

/** The piece with the job's seam, edges and marks, parallels within `tolerance` mm; and what could not be made. */
export function fabricatedPiece(piece: Piece, { part, fabrication }: Job, tolerance: number): { made: FabricatedPiece; problems: Problem[] } {
  const { pattern: { girth, loops, towards }, form } = piece;
  const { purpose, hand, quantity, seam, edges } = fabrication;
  const opposite = hand === "opposite";
  const whole = loops.map((loop): Loop => {
    const segments = withoutSpecks(loop.segments, SPECK);
    return { ...loop, segments: opposite ? mirroredChain(segments, girth) : segments };
  }).filter(({ segments }) => segments.length > 1);
  const gap = seam.kind === "butt" ? seam.gap : 0;
  const gapped = withRootGap(whole, girth, gap, part.cuts);
  const net = gapped.ok ? gapped.loops : whole;
  const asked = allowancesOf(fabrication, form.thickness);
  const { contours, strips, refusals } = contoursOf(net, asked, girth, part.cuts, tolerance);
  const layout: Layout = { setBack: gapped.ok ? gap / 2 : 0, opposite };
  const rolled = purpose === "blank";
  const seamLeft = refusals.some(({ place }) => place === "seam-start" || place === "seam-end");
  const marks = [
    ...quarterMarks(piece, layout), ...stationMarks(piece, layout, rolled), ...endMatchMarks(piece, layout), ...seamMatchMarks(net, girth),
    ...strips.flatMap((strip) => stripMarks(strip, edges, tolerance)), ...(seamLeft ? [] : seamFolds(piece, net, layout, seam, part.cuts, tolerance)),
    ...arrowMarks(piece, layout, rolled),
  ];
  const slits = pathLength(marks.flatMap((mark) => (mark.kind === "slit" ? [mark.line] : [])));
  const blank = blankOf(contours.map(({ segments }) => segments), net.map(({ segments }) => segments), slits, { ...fabrication, thickness: rolled ? form.thickness : 0 });
  const made: FabricatedPiece = {
    piece, name: piece.name, purpose, face: towards > 0 ? "outside" : "inside", hand, quantity, net, contours, marks,
    allowances: asked.filter((one) => strips.some(({ allowance }) => allowance === one)), heights: stationHeights(piece), blank,
  };
  const problems = refusals.map((refusal) => problemOf(refusal, fabrication));
  if (!gapped.ok) problems.unshift({ code: "gap-too-wide", field: "fabrication.seam.gap", value: gap, detail: { girth: gapped.at.x, height: gapped.at.y } });
  return { made, problems };
}

/** At the number that asks for too much. */
function problemOf({ code, place, at }: Refusal, { edges }: FabricationChoices): Problem {
  const detail = { place, girth: at.x, height: at.y };
  if (place !== "top" && place !== "bottom") return { code, field: "fabrication.seam.width", detail };
  return { code, field: `fabrication.edges.${place}.${edges[place].kind === "wired" ? "wire" : "width"}`, detail };
}
