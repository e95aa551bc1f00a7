// Which measures does each view carry? Each once, where it is seen true: the diameter, the heights of both ends from the base
// line, and of each opening its height and size.

import { type Development, type Edge, type Job, type Piece, sameOwner } from "../../core/index";
import type { Ref } from "../display";
import type { Figures } from "../figures";
import { heightField } from "./figureField";
import { heightExtremes } from "../view/heightExtremes";
import { openingMeasures } from "./openingMeasures";
import { refOf } from "../view/viewGeometry";
import type { ViewDimension, ViewMeasures } from "./viewMeasures";
import { type Broadside, type ViewName, type Views, sideways } from "../view/views";
import type { DrawingWords } from "../words";

/** The measures of each view; end-on views have none of these. */
export function principalDimensions(
  development: Development, piece: Piece, views: Views, figures: Figures, words: DrawingWords,
): Record<ViewName, ViewMeasures> {
  const openings = openingMeasures(development.job, piece, views, figures);
  if (views.front.kind !== "broadside") return openings;
  const own = [diameterOf(development.job, piece, figures, words), ...endHeights(development.job, piece, views.front, figures)];
  return { ...openings, front: { ...openings.front, lengths: [...openings.front.lengths, ...own] } };
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
    const ends = edges.map((edge) => heightExtremes(piece, edge));
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
