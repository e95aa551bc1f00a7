// Which measures does each view carry? Each once, where it is seen true: the diameter, the heights of both ends from the base
// line, and of each opening its height and size.

import { type Development, type Edge, type Job, type Outline, type Piece, type Vec2, sameOwner } from "../core/index";
import type { Ref } from "./display";
import type { Figures } from "./figures";
import { extentField, heightField } from "./figureField";
import { heightExtreme } from "./heightExtreme";
import { type OpeningPlace, openingPlaces } from "./openingPlaces";
import { refOf } from "./viewGeometry";
import { type Broadside, type EndOn, type ViewName, type Views, sideways } from "./views";
import type { DrawingWords } from "./words";

/** A length on a broadside view, in model coordinates (sideways, height). */
export interface ViewDimension {
  readonly along: "axis" | "across";
  readonly a: Vec2;
  readonly b: Vec2;
  readonly text: string;
  readonly group: "ends" | "openings";
  readonly ref: Ref;
  /** Of a width: the lowest and highest height of the opening, beside which it may be written. */
  readonly beside?: readonly [number, number];
}

/** A size written out, in model coordinates. */
export interface ViewNote {
  readonly centre: Vec2;
  readonly text: string;
  /** A second line. */
  readonly under?: string;
  readonly ref: Ref;
}

/** How much being seen from outside counts against being seen squarely. */
const SEEN = 0.3;

export interface ViewMeasures {
  readonly lengths: readonly ViewDimension[];
  readonly notes: readonly ViewNote[];
}

/** The measures of each view; end-on views have none of these. */
export function principalDimensions(
  development: Development, piece: Piece, views: Views, figures: Figures, words: DrawingWords,
): Record<ViewName, ViewMeasures> {
  const lengths: Record<ViewName, ViewDimension[]> = { front: [], top: [], side: [] };
  const notes: Record<ViewName, ViewNote[]> = { front: [], top: [], side: [] };
  const measured = new Set<string>();
  for (const opening of openingPlaces(development.job, piece)) {
    const name = truestView(views, opening);
    const view = views[name];
    if (view.kind !== "broadside" || measured.has(opening.cut.id)) continue;
    measured.add(opening.cut.id);
    const found = openingMeasures(opening, view, piece, figures);
    lengths[name].push(...found.lengths.filter((length) => !lengths[name].some((other) => measuresSame(length, other))));
    notes[name].push(...found.notes);
  }
  if (views.front.kind === "broadside") {
    lengths.front.push(diameterOf(development.job, piece, figures, words), ...endHeights(development.job, piece, views.front, figures));
  }
  return {
    front: { lengths: lengths.front, notes: notes.front }, top: { lengths: lengths.top, notes: notes.top }, side: { lengths: lengths.side, notes: notes.side },
  };
}

/** Whether two dimensions would show one length at one place twice. */
function measuresSame(a: ViewDimension, b: ViewDimension): boolean {
  const along = ({ along, a: from, b: to }: ViewDimension) => (along === "axis" ? [from.y, to.y] : [from.x, to.x]);
  return a.along === b.along && along(a).every((place, i) => Math.abs(place - (along(b)[i] ?? NaN)) < 1e-6);
}

/** The diameter on which the views are drawn, that of the surface on which the cuts are placed; with thickness it says which one that is. */
function diameterOf({ part }: Job, { form }: Piece, figures: Figures, words: DrawingWords): ViewDimension {
  const { cutRadius, thickness } = form;
  const surface = (["mean", "outside"] as const).find((name) => 2 * cutRadius === form[name]) ?? "inside";
  const basis = thickness > 0 ? ` ${words.surface[surface]}` : "";
  return {
    along: "across", group: "ends", ref: { clause: "part", field: thickness === 0 || part.basis === surface ? "diameter" : null },
    text: `⌀${figures.length(form[surface])}${basis}`, a: { x: -cutRadius, y: 0 }, b: { x: cutRadius, y: 0 },
  };
}

/** Lowest, highest and level heights of every feature of both ends, from the base line, each height once. */
function endHeights(job: Job, piece: Piece, view: Broadside, figures: Figures): ViewDimension[] {
  const { cutRadius: radius } = piece.form;
  const openings = new Set(job.part.cuts.filter(({ kind }) => kind === "opening").map(({ id }) => id));
  const heights = new Map<string, ViewDimension>();
  for (const edges of edgesByOwner(piece)) {
    const owner = edges[0]?.owner;
    if (!owner || owner.kind === "seam" || (owner.kind === "cut" && openings.has(owner.id))) continue;
    const ends = edges.map((edge) => ({ low: heightExtreme(piece, edge, -1), high: heightExtreme(piece, edge, 1) }));
    const least = Math.min(...ends.map(({ low }) => low.z)), greatest = Math.max(...ends.map(({ high }) => high.z));
    const isShown = ({ low, high }: (typeof ends)[number], z: number) => high.z - low.z < 1e-6 || z < least + 1e-6 || z > greatest - 1e-6;
    for (const { theta, z } of ends.flatMap((one) => [one.low, one.high].filter((end) => isShown(one, end.z)))) {
      const text = figures.length(z);
      const ref: Ref = { ...refOf(owner), field: heightField(job, owner, z) };
      const b = { x: sideways(view, radius, theta), y: z };
      const known = heights.get(text);
      if (!known || b.x < known.b.x) heights.set(text, { along: "axis", group: "ends", text, ref, a: { x: radius, y: 0 }, b });
    }
  }
  heights.delete(figures.length(0));
  return [...heights.values()];
}

function edgesByOwner({ trimmed: { edges } }: Piece): Edge[][] {
  const groups: Edge[][] = [];
  for (const edge of edges) {
    const group = groups.find(([first]) => first && sameOwner(first.owner, edge.owner));
    if (group) group.push(edge);
    else groups.push([edge]);
  }
  return groups;
}

/** The broadside view that looks most squarely at the opening, rather at its outside; the front view when two do so alike. */
function truestView(views: Views, { theta }: OpeningPlace): ViewName {
  const squareness = (view: Broadside | EndOn) => {
    if (view.kind !== "broadside") return -1;
    const cosine = Math.cos(theta - view.facing);
    return Math.abs(cosine) + (cosine > 0.1 ? SEEN : 0);
  };
  const other: ViewName = views.side.kind === "broadside" ? "side" : "top";
  return squareness(views[other]) > squareness(views.front) + 1e-6 ? other : "front";
}

/** Height and size of an opening; a size that the view does not show true, or not whole, is written out. */
function openingMeasures(opening: OpeningPlace, view: Broadside, piece: Piece, figures: Figures): { lengths: ViewDimension[]; notes: ViewNote[] } {
  const { cut, theta, halfLength, halfWidth, square } = opening;
  const { cutRadius: radius } = piece.form;
  const x = sideways(view, radius, theta);
  const facing = Math.abs(Math.cos(theta - view.facing));
  const isFaced = Math.abs(Math.sin((cut.direction * Math.PI) / 180 - view.facing)) < 1e-9;
  const clause = `cut:${cut.id}` as const;
  const of = (field: string | null) => ({ group: "openings" as const, ref: { clause, field } });
  const low = cut.height - halfLength, high = cut.height + halfLength;
  const lengths: ViewDimension[] = [
    { ...of("height"), along: "axis", text: figures.length(cut.height), a: { x: radius, y: 0 }, b: { x: x + halfWidth * facing, y: cut.height } },
  ];
  const width = (from: number, to: number, field: string | null): ViewDimension => ({
    ...of(field), along: "across", text: figures.length(Math.abs(to - from)), a: { x: from, y: low }, b: { x: to, y: low }, beside: [low, high],
  });
  if (isFaced && Math.abs(x) > 1e-6) lengths.push(width(0, x, "offset"));
  const { outline } = cut;
  const isWhole = low >= piece.pattern.height[0] && high <= piece.pattern.height[1] && Math.abs(x) + halfWidth <= radius + 1e-9;
  if (!isWhole || (outline.shape !== "round" && !(square && isFaced))) {
    return { lengths, notes: [{ ref: of(outline.shape === "round" ? "outline.diameter" : null).ref, centre: { x, y: cut.height }, ...sizeText(outline, figures) }] };
  }
  const sign = outline.shape === "round" ? "⌀" : "";
  lengths.push({ ...of(extentField(cut, "axis")), along: "axis", text: `${sign}${figures.length(2 * halfLength)}`, a: { x, y: low }, b: { x, y: high } });
  if (sign === "") lengths.push(width(x - halfWidth, x + halfWidth, extentField(cut, "across")));
  return { lengths, notes: [] };
}

/** A diameter; or across the pipe by along it; or width by length and the turn. */
function sizeText(outline: Outline, figures: Figures): Pick<ViewNote, "text" | "under"> {
  if (outline.shape === "round") return { text: `⌀${figures.length(outline.diameter)}` };
  const { width, length, turn } = outline;
  const [across, along] = turn % 180 === 0 || turn % 90 !== 0 ? [width, length] : [length, width];
  const text = `${figures.length(across)} × ${figures.length(along)}`;
  return turn % 90 === 0 ? { text } : { text, under: figures.angle(turn) };
}
