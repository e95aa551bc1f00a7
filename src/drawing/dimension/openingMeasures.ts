// Which view carries the measures of an opening, and which measures: its height, how far it stands off, its size.

import type { Job, Outline, Piece } from "../../core/index";
import { extentField } from "./figureField";
import type { Figures } from "../figures";
import { type OpeningPlace, openingPlaces } from "../view/openingPlaces";
import type { ViewDimension, ViewMeasures, ViewNote } from "./viewMeasures";
import { type Broadside, type EndOn, type ViewName, type Views, sideways } from "../view/views";

/** How much being seen from outside counts against being seen squarely. */
const SEEN = 0.3;

/** The measures of all openings, each in the view that shows it truest. */
export function openingMeasures(job: Job, piece: Piece, views: Views, figures: Figures): Record<ViewName, ViewMeasures> {
  const lengths: Record<ViewName, ViewDimension[]> = { front: [], top: [], side: [] };
  const notes: Record<ViewName, ViewNote[]> = { front: [], top: [], side: [] };
  const measured = new Set<string>();
  for (const opening of openingPlaces(job, piece)) {
    const name = truestView(views, opening);
    const view = views[name];
    if (view.kind !== "broadside" || measured.has(opening.cut.id)) continue;
    measured.add(opening.cut.id);
    const found = measuresOf(opening, view, piece, figures);
    lengths[name].push(...found.lengths.filter((length) => !lengths[name].some((other) => measuresSame(length, other))));
    notes[name].push(...found.notes);
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

/** The broadside view that looks most squarely at the opening, rather at its outside; the front view when two do so alike. */
export function truestView(views: Views, { theta }: OpeningPlace): ViewName {
  const squareness = (view: Broadside | EndOn) => {
    if (view.kind !== "broadside") return -1;
    const cosine = Math.cos(theta - view.facing);
    return Math.abs(cosine) + (cosine > 0.1 ? SEEN : 0);
  };
  const other: ViewName = views.side.kind === "broadside" ? "side" : "top";
  return squareness(views[other]) > squareness(views.front) + 1e-6 ? other : "front";
}

/** Height and size of an opening; a size that the view does not show true, or not whole, is written out. */
function measuresOf(opening: OpeningPlace, view: Broadside, piece: Piece, figures: Figures): { lengths: ViewDimension[]; notes: ViewNote[] } {
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
