// The plates that close an end, less a gap for the weld: the true shape of a flat cut, or the plate bent to the profile of a shaped one.

import { ANGLE_NOISE } from "../numeric/tolerance";
import { flattenSegments } from "../geometry/flatten";
import { pathArea } from "../geometry/path";
import { pathBounds } from "../geometry/pathBounds";
import type { Line, Segment } from "../geometry/segment";
import { distance } from "../geometry/vector";
import type { Cutter } from "../cut/cutter";
import { sameOwner } from "../cut/owner";
import type { PlateChoice } from "../job/fabricationChoices";
import type { End, Job } from "../job/job";
import type { Problem } from "../job/problem";
import type { Piece } from "../part/pipePiece";
import { trimPipe } from "../trim/trimmed";
import { type SweptEnd, bentSection } from "./bentSection";
import { type Blank, blankOf } from "./blank";
import type { Contour } from "./contour";
import { flatSections } from "./flatSection";
import { lineBetween } from "./mark";
import { offsetRun } from "./offsetRun";
import { endOf } from "./place";

/**
 * Seen from above (the side of the top end), the pipe's axis at (0, 0). Flat: the highest place up, x along the level axis, y up the
 * slope. Bent: laid flat, x along the profile from left to right as it is described, y to the back.
 */
export interface EndPlate {
  readonly name: string;
  readonly end: End;
  /** The cut it closes, null for a square end of the stock. */
  readonly cutId: string | null;
  /** Shaped: part of a disc or ellipse. Bent: to the profile of a shaped cut. */
  readonly shape: "disc" | "ellipse" | "shaped" | "bent";
  readonly contour: Contour;
  /** Bend lines of a bent plate, from edge to edge. */
  readonly folds: readonly Line[];
  /** Half the measures of the whole section, of a bent plate laid flat, before the gap, mm. */
  readonly semiAxes: { readonly long: number; readonly short: number };
  readonly fit: PlateChoice["fit"];
  readonly gap: number;
  readonly blank: Blank;
  readonly quantity: number;
}

/** Stretches of the section shorter than this many mm mark a point where the cut only touches, no edge. */
const SPECK = 1e-5;

/** The plates that close one end, one for each flat cut it is made of, within `tolerance` mm; and why one cannot be made. */
export function endPlates(piece: Piece, job: Job, end: End, tolerance: number): { plates: EndPlate[]; problems: Problem[] } {
  const choice = job.fabrication.plates[end];
  if (!choice) return { plates: [], problems: [] };
  const field = `fabrication.plates.${end}`;
  const radius = piece.form[choice.fit] / 2;
  const cutters = piece.cutters.map((cutter) => ({ ...cutter, radius })).filter((cutter, i, all) => all.findIndex((one) => sameOwner(one.owner, cutter.owner)) === i);
  const { edges } = trimPipe({ ...piece.form, radius }, cutters, piece.pattern.seam);
  const speck = Math.max(ANGLE_NOISE, SPECK / radius);
  const ending = edges.filter(({ owner }) => endOf(owner, job.part.cuts) === end);
  const own = ending.filter(({ from, to }) => Math.abs(to - from) > speck);
  const closing = cutters.filter((cutter) => own.some(({ owner }) => sameOwner(owner, cutter.owner)));
  const problems: Problem[] = own.length === 0 ? [{ code: "plate-not-flat", field }] : [];
  const plates = closing.flatMap((cutter): EndPlate[] => {
    const turns = own.flatMap(({ owner, face, from, to }) => (face && sameOwner(owner, cutter.owner) ? [{ face: face.face, from: Math.min(from, to), to: Math.max(from, to) }] : []));
    const uprights = ending.flatMap(({ owner, face, from, z }) => (!face && sameOwner(owner, cutter.owner) ? [{ theta: from, height: Math.abs(z[1] - z[0]) }] : []));
    const sections = sectionsOf(cutter, closing, { turns, uprights }, speck, tolerance);
    if (sections.length === 0) problems.push({ code: "plate-not-flat", field });
    return sections.flatMap((section): EndPlate[] => {
      const segments = lessGap(section.segments, choice.gap, tolerance);
      if (!segments) {
        problems.push({ code: "plate-gap-too-wide", field: `${field}.gap`, value: choice.gap });
        return [];
      }
      const { shape, semiAxes } = section;
      const contour: Contour = { kind: "outline", segments: segments.map((segment) => ({ ...segment, owner: cutter.owner, allowance: null })) };
      const cutId = cutter.owner.kind === "cut" ? cutter.owner.id : null;
      const blank = blankOf([segments], [segments], 0, { ...job.fabrication, thickness: piece.form.thickness });
      const folds = section.folds.flatMap((fold) => within(fold, segments, tolerance));
      return [{ name: `${piece.name} ${end} plate`, end, cutId, shape, contour, folds, semiAxes, fit: choice.fit, gap: choice.gap, blank, quantity: job.fabrication.quantity }];
    });
  });
  const several = plates.length > 1;
  return { plates: plates.map((plate, i) => (several ? { ...plate, name: `${plate.name} ${i + 1}` } : plate)), problems };
}

interface Section extends Pick<EndPlate, "shape" | "semiAxes" | "folds"> {
  readonly segments: readonly Segment[];
}

/** What closes the pipe along one cutter; none where no plate does. */
function sectionsOf(cutter: Cutter, closing: readonly Cutter[], ends: SweptEnd, speck: number, tolerance: number): Section[] {
  const { radius } = cutter;
  if (cutter.kind === "plane") {
    const sight = closing.find(({ kind }) => kind === "sweep")?.direction ?? null;
    const semiAxes = { long: radius * Math.sqrt(1 + cutter.slope ** 2), short: radius };
    return flatSections(cutter, ends.turns, sight, speck, tolerance).map((section) => ({ ...section, folds: [], semiAxes }));
  }
  const bent = closing.every((other) => isLevelAlong(other, cutter.direction)) ? bentSection(cutter, ends, speck, tolerance) : null;
  const bounds = bent && pathBounds(bent.segments);
  return bounds ? [{ ...bent, shape: "bent", semiAxes: { long: (bounds.to.x - bounds.from.x) / 2, short: bounds.to.y } }] : [];
}

/** Whether a cutter has one height along lines of sight in this direction: where two such meet, the line between is straight. */
function isLevelAlong(cutter: Cutter, direction: number): boolean {
  const along = cutter.kind === "plane" ? cutter.slope * Math.cos(cutter.direction - direction) : Math.sin(cutter.direction - direction);
  return Math.abs(along) < ANGLE_NOISE;
}

/** The outline with the gap taken off; null when nothing is left of it. */
function lessGap(section: readonly Segment[], gap: number, tolerance: number): Segment[] | null {
  const offset = gap > 0 ? offsetRun(section, -gap, tolerance) : { ok: true as const, segments: section };
  if (!offset.ok || section.length === 0 || !(pathArea(offset.segments) > 0)) return null;
  const [first, last] = [offset.segments[0], offset.segments.at(-1)];
  if (!first || !last || distance(first.from, last.to) > tolerance) return null;
  return [...offset.segments.slice(0, -1), { ...last, to: first.from }];
}

/** A line across the plate, cut off at its outline; none where the gap took away all of it. */
function within({ from: { x } }: Line, outline: readonly Segment[], tolerance: number): Line[] {
  const points = flattenSegments(outline, tolerance);
  const heights = points.slice(1).flatMap((b, i) => {
    const a = points[i] ?? b;
    return (a.x - x) * (b.x - x) <= 0 && a.x !== b.x ? [a.y + ((x - a.x) * (b.y - a.y)) / (b.x - a.x)] : [];
  });
  return heights.length > 0 ? [lineBetween({ x, y: Math.min(...heights) }, { x, y: Math.max(...heights) })] : [];
}
