// The plate that closes a flat end: the true shape of the section there, less a gap for the weld. An oblique section of a
// round pipe is an ellipse of semi-axes r / cos b and r (elementary); where the cut runs out, its sides are straight.

import { ANGLE_NOISE } from "../numeric/tolerance";
import { TURN } from "../numeric/angle";
import { fitCubics } from "../geometry/fit";
import { pathArea } from "../geometry/path";
import type { Segment } from "../geometry/segment";
import { type Vec2, distance, unit } from "../geometry/vector";
import type { PlaneCutter } from "../cut/cutter";
import { sameOwner } from "../cut/owner";
import type { PlateChoice } from "../job/fabricationChoices";
import type { End, Job } from "../job/job";
import type { Problem } from "../job/problem";
import type { Piece } from "../part/pipePiece";
import { trimPipe } from "../trim/trimmed";
import { type Blank, blankOf } from "./blank";
import type { Contour } from "./contour";
import { offsetRun } from "./offsetRun";
import { endOf } from "./place";

/** Seen from above (the side of the top end), the highest place up: x along the level axis, y up the slope, the pipe's axis at (0, 0). */
export interface EndPlate {
  readonly name: string;
  readonly end: End;
  /** The cut it closes, null for a square end of the stock. */
  readonly cutId: string | null;
  readonly shape: "disc" | "ellipse" | "shaped";
  readonly contour: Contour;
  /** Of the whole section, before the gap, mm. */
  readonly semiAxes: { readonly long: number; readonly short: number };
  readonly fit: PlateChoice["fit"];
  readonly gap: number;
  readonly blank: Blank;
  readonly quantity: number;
}

/** Stretches of the section shorter than this many mm mark a point where the cut only touches, no edge. */
const SPECK = 1e-5;

/** A stretch of the section's edge, θ growing. */
interface Turned {
  readonly from: number;
  readonly to: number;
}

/** The plates that close one end, one for each flat cut it is made of, within `tolerance` mm; and why one cannot be made. */
export function endPlates(piece: Piece, job: Job, end: End, tolerance: number): { plates: EndPlate[]; problems: Problem[] } {
  const choice = job.fabrication.plates[end];
  if (!choice) return { plates: [], problems: [] };
  const field = `fabrication.plates.${end}`;
  const radius = piece.form[choice.fit] / 2;
  const cutters = piece.cutters.map((cutter) => ({ ...cutter, radius })).filter((cutter, i, all) => all.findIndex((one) => sameOwner(one.owner, cutter.owner)) === i);
  const { edges } = trimPipe({ ...piece.form, radius }, cutters, piece.pattern.seam);
  const speck = Math.max(ANGLE_NOISE, SPECK / radius);
  const own = edges.filter(({ owner, from, to }) => endOf(owner, job.part.cuts) === end && Math.abs(to - from) > speck);
  const closing = cutters.filter((cutter) => own.some(({ owner }) => sameOwner(owner, cutter.owner)));
  const flat = closing.filter((cutter) => cutter.kind === "plane");
  const problems: Problem[] = flat.length < closing.length || own.length === 0 ? [{ code: "plate-not-flat", field }] : [];
  const plates = flat.flatMap((cutter): EndPlate[] => {
    const turns = own.flatMap(({ owner, face, from, to }) => (face && sameOwner(owner, cutter.owner) ? [{ from: Math.min(from, to), to: Math.max(from, to) }] : []));
    const made = plateOf(cutter, joinedTurns(turns, speck), choice, tolerance);
    if (!made) {
      problems.push({ code: "plate-gap-too-wide", field: `${field}.gap`, value: choice.gap });
      return [];
    }
    const { segments, shape } = made;
    const contour: Contour = { kind: "outline", segments: segments.map((segment) => ({ ...segment, owner: cutter.owner, allowance: null })) };
    const cutId = cutter.owner.kind === "cut" ? cutter.owner.id : null;
    const blank = blankOf([segments], [segments], 0, { ...job.fabrication, thickness: piece.form.thickness });
    const semiAxes = { long: radius * Math.sqrt(1 + cutter.slope ** 2), short: radius };
    return [{ name: `${piece.name} ${end} plate`, end, cutId, shape, contour, semiAxes, fit: choice.fit, gap: choice.gap, blank, quantity: job.fabrication.quantity }];
  });
  const several = plates.length > 1;
  return { plates: plates.map((plate, i) => (several ? { ...plate, name: `${plate.name} ${i + 1}` } : plate)), problems };
}

/** Stretches once round, those less than `speck` radians apart made one; a whole turn is one stretch. */
function joinedTurns(turns: readonly Turned[], speck: number): Turned[] {
  const joined: Turned[] = [];
  for (const turn of [...turns].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && turn.from - last.to <= speck) joined[joined.length - 1] = { from: last.from, to: turn.to };
    else joined.push(turn);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (!first || !last || first.from + TURN - last.to > speck) return joined;
  // Round the place where the turn begins; of one stretch only, the whole turn.
  return first === last ? [{ from: first.from, to: first.from + TURN }] : [{ from: last.from - TURN, to: first.to }, ...joined.slice(1, -1)];
}

/** The closed outline, anticlockwise, the gap taken off; null when nothing is left of it. */
function plateOf(cutter: PlaneCutter, turns: readonly Turned[], { gap }: PlateChoice, tolerance: number) {
  const whole = turns.length === 1 && turns.every(({ from, to }) => to - from >= TURN - ANGLE_NOISE);
  const section = whole ? wholeSection(cutter, tolerance) : openSection(cutter, turns, tolerance);
  const offset = gap > 0 ? offsetRun(section, -gap, tolerance) : { ok: true as const, segments: section };
  if (!offset.ok || section.length === 0 || !(pathArea(offset.segments) > 0)) return null;
  const [first, last] = [offset.segments[0], offset.segments.at(-1)];
  if (!first || !last || distance(first.from, last.to) > tolerance) return null;
  const segments = [...offset.segments.slice(0, -1), { ...last, to: first.from }];
  return { segments, shape: whole ? (cutter.slope === 0 ? ("disc" as const) : ("ellipse" as const)) : ("shaped" as const) };
}

function wholeSection(cutter: PlaneCutter, tolerance: number): Segment[] {
  const { direction } = cutter;
  return [...arcOf(cutter, { from: direction, to: direction + Math.PI }, tolerance), ...arcOf(cutter, { from: direction + Math.PI, to: direction + TURN }, tolerance)];
}

/** Arcs of the section with straight lines between, from the middle of the last line. */
function openSection(cutter: PlaneCutter, turns: readonly Turned[], tolerance: number): Segment[] {
  const arcs = turns.map((turn) => arcOf(cutter, turn, tolerance));
  const [begin, end] = [arcs[0]?.[0]?.from, arcs.at(-1)?.at(-1)?.to];
  if (!begin || !end) return [];
  const middle = { x: (begin.x + end.x) / 2, y: (begin.y + end.y) / 2 };
  const between = arcs.flatMap((arc, i): Segment[] => {
    const [to, from] = [arcs[i + 1]?.[0]?.from, arc.at(-1)?.to];
    return from && to ? [...arc, { kind: "line", from, to }] : arc;
  });
  return [{ kind: "line", from: middle, to: begin }, ...between, { kind: "line", from: end, to: middle }];
}

function arcOf({ direction, slope, radius }: PlaneCutter, { from, to }: Turned, tolerance: number): Segment[] {
  const stretch = Math.sqrt(1 + slope * slope);
  const at = (theta: number): Vec2 => ({ x: -radius * Math.sin(theta - direction), y: radius * stretch * Math.cos(theta - direction) });
  if (slope === 0) return [{ kind: "arc", from: at(from), to: at(to), centre: { x: 0, y: 0 }, anticlockwise: true }];
  const theta = (u: number) => from + u * (to - from);
  return fitCubics({ point: (u) => at(theta(u)), tangent: (u) => unit(-Math.cos(theta(u) - direction), -stretch * Math.sin(theta(u) - direction)) }, tolerance);
}
