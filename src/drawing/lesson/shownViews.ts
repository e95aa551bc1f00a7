// Which views does a school sheet need? Front view and circle always; the third where something is given in it.

import type { Development, Piece } from "../../core/index";
import { openingPlaces } from "../view/openingPlaces";
import { broadsideNames, circleName, givingView } from "../steps/cutSight";
import type { ViewName, Views } from "../view/views";

/** The names of the views that are drawn; `other`: the third in any case. An opening is carried into the pattern from the third. */
export function shownViews({ job }: Development, piece: Piece, views: Views, other: boolean): ReadonlySet<ViewName> {
  const [front, third] = broadsideNames(views);
  const cutting = new Set(piece.trimmed.edges.flatMap(({ owner }) => (owner.kind === "cut" ? [owner.id] : [])));
  const given = job.part.cuts.some((cut) => cutting.has(cut.id) && givingView(cut, views) === third);
  const needed = other || given || openingPlaces(job, piece).length > 0;
  return new Set([front, circleName(views), ...(needed ? [third] : [])]);
}
