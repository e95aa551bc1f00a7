// Which measures does each view carry? Each once, where it is seen true: the diameter, the heights of both ends from the base
// line, and of each opening its height and size.

import type { Development, Job, Piece } from "../core/index";
import type { Ref } from "./display";
import type { Figures } from "./figures";
import { heightExtreme } from "./heightExtreme";
import { type OpeningPlace, openingPlaces } from "./openingPlaces";
import { type Broadside, type EndOn, type ViewName, type Views, sideways } from "./views";
import type { DrawingWords } from "./words";

/** A length on a broadside view, in model coordinates (sideways, height). */
export interface ViewDimension {
  readonly along: "axis" | "across";
  readonly a: { readonly x: number; readonly y: number };
  readonly b: { readonly x: number; readonly y: number };
  readonly text: string;
  readonly group: "ends" | "openings";
  readonly ref: Ref;
}

/** The dimensions of the front and the other broadside view. */
export function principalDimensions(
  development: Development, piece: Piece, views: Views, figures: Figures, words: DrawingWords,
): Record<ViewName, ViewDimension[]> {
  const lists: Record<ViewName, ViewDimension[]> = { front: [], top: [], side: [] };
  const { front } = views;
  if (front.kind !== "broadside") return lists;
  lists.front.push(diameterOf(piece, figures, words), ...endHeights(development.job, piece, front, figures));
  const written = new Set(lists.front.map(({ text, along }) => `${along}/${text}`));
  for (const opening of openingPlaces(development.job, piece)) {
    const name = truestView(views, opening);
    const view = views[name];
    if (view.kind !== "broadside") continue;
    for (const dimension of openingDimensions(opening, view, piece, figures)) {
      const key = `${dimension.along}/${dimension.text}/${dimension.ref.clause}`;
      if (written.has(key)) continue;
      written.add(key);
      lists[name].push(dimension);
    }
  }
  return lists;
}

/** The diameter on which the views are drawn; with thickness that is the mean one, and said so. */
function diameterOf({ form, pattern }: Piece, figures: Figures, words: DrawingWords): ViewDimension {
  const basis = form.thickness > 0 ? ` ${words.mean}` : "";
  const y = pattern.height[0];
  return {
    along: "across", group: "ends", ref: { clause: "part" }, text: `⌀${figures.length(form.mean)}${basis}`,
    a: { x: -form.radius, y }, b: { x: form.radius, y },
  };
}

/** Lowest and highest height of every feature of both ends, from the base line, each height once. */
function endHeights(job: Job, piece: Piece, view: Broadside, figures: Figures): ViewDimension[] {
  const { radius } = piece.form;
  const openings = new Set(job.part.cuts.filter(({ kind }) => kind === "opening").map(({ id }) => id));
  const heights = new Map<string, ViewDimension>();
  for (const edge of piece.trimmed.edges) {
    const { owner } = edge;
    if (owner.kind === "seam" || (owner.kind === "cut" && openings.has(owner.id))) continue;
    const ref: Ref = owner.kind === "cut" ? { clause: `cut:${owner.id}` } : { clause: "part" };
    for (const { theta, z } of [heightExtreme(piece, edge, -1), heightExtreme(piece, edge, 1)]) {
      const text = figures.length(z);
      const b = { x: sideways(view, radius, theta), y: z };
      const known = heights.get(text);
      if (!known || b.x < known.b.x) heights.set(text, { along: "axis", group: "ends", text, ref, a: { x: -radius, y: 0 }, b });
    }
  }
  heights.delete(figures.length(0));
  return [...heights.values()];
}

/** The broadside view that looks most squarely at the opening; the front view when two do so alike. */
function truestView(views: Views, { theta }: OpeningPlace): ViewName {
  const squareness = (view: Broadside | EndOn) => (view.kind === "broadside" ? Math.abs(Math.cos(theta - view.facing)) : -1);
  const other: ViewName = views.side.kind === "broadside" ? "side" : "top";
  return squareness(views[other]) > squareness(views.front) + 1e-6 ? other : "front";
}

function openingDimensions(opening: OpeningPlace, view: Broadside, piece: Piece, figures: Figures): ViewDimension[] {
  const { cut, theta, halfLength, halfWidth, square } = opening;
  const { radius } = piece.form;
  const x = sideways(view, radius, theta);
  const facing = Math.abs(Math.cos(theta - view.facing));
  const isFaced = Math.abs(Math.abs(Math.cos((cut.direction * Math.PI) / 180 - view.facing)) - 1) < 1e-9;
  const common = { group: "openings", ref: { clause: `cut:${cut.id}` } } as const;
  const edge = x + halfWidth * facing;
  const list: ViewDimension[] = [
    { ...common, along: "axis", text: figures.length(cut.height), a: { x: radius, y: 0 }, b: { x: edge, y: cut.height } },
  ];
  if (square) {
    const sign = cut.outline.shape === "round" ? "⌀" : "";
    list.push({ ...common, along: "axis", text: sign + figures.length(2 * halfLength), a: { x, y: cut.height - halfLength }, b: { x, y: cut.height + halfLength } });
    if (sign === "" && isFaced) {
      const y = cut.height - halfLength;
      list.push({ ...common, along: "across", text: figures.length(2 * halfWidth), a: { x: x - halfWidth, y }, b: { x: x + halfWidth, y } });
    }
  }
  if (isFaced && Math.abs(x) > 1e-6) {
    const y = cut.height - halfLength;
    list.push({ ...common, along: "across", text: figures.length(Math.abs(x)), a: { x: 0, y }, b: { x, y } });
  }
  return list;
}
