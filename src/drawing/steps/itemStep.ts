// At which step of the construction does an item of the board appear?

import type { Development } from "../../core/index";
import type { BlockName } from "../board/arrange";
import type { Board } from "../board/board";
import { isMeasure } from "../board/isMeasure";
import type { Item, PathItem } from "../display";
import type { EndOn, Broadside } from "../view/views";
import { isGivenIn } from "./cutSight";

/** The steps in their order; each opening has a step of its own between the curve and the lining in. */
export type StepName =
  | "data" | "views" | "circle" | "project" | "complete" | "stretch-out" | "elements" | "carry" | "curve" | `opening-${string}` | "line-in" | "dimensions";

export interface ItemStep {
  readonly step: StepName;
  /** The station it comes with, where the step goes from station to station. */
  readonly station?: number;
}

type Drawn = Exclude<Item, { kind: "group" } | { kind: "surface" }>;

/** The step of an item of one block of the board. Items that belong to no station, feature or measure come with the views. */
export function itemStep({ job, pieces }: Development, board: Pick<Board, "blocks" | "views">, name: BlockName, item: Item, pieceIndex = 0): ItemStep {
  if (item.kind === "group" || item.kind === "surface") return { step: "views" };
  const opening = job.part.cuts.find((cut) => cut.kind === "opening" && item.ref?.clause === `cut:${cut.id}`);
  if (isMeasure(item)) return { step: "dimensions" };
  if (opening) return { step: `opening-${opening.id}` };
  if (name !== "pattern") return { step: viewStep(job, board.views[name], item) };
  const closing = (pieces[pieceIndex]?.stations.length ?? 0) - 1;
  // The closing station is station 0 again.
  const station = item.ref?.station === closing ? 0 : (item.ref?.station ?? 0);
  if (item.pen === "stretch-out") return { step: "stretch-out" };
  if (item.kind === "text") return isUnder(item.at, board) ? { step: "elements" } : { step: "carry", station };
  return item.pen === "station" || item.pen === "extra station" ? { step: "carry", station } : { step: "line-in" };
}

function viewStep({ part }: Development["job"], view: Broadside | EndOn, item: Drawn): StepName {
  if (item.ref?.clause === "stations" || item.pen === "seam") return "circle";
  if (item.pen === "centre line") return "data";
  if (view.kind === "end-on") return "views";
  const made = part.cuts.filter((cut) => cut.on && cut.kind !== "opening");
  if (item.pen === "contour") return made.every((cut) => isGivenIn(cut, view)) ? "views" : "complete";
  const cut = made.find(({ id }) => item.ref?.clause === `cut:${id}`);
  return cut && !isGivenIn(cut, view) ? "complete" : "views";
}

/** Whether a place of the pattern lies on the side of the stretch-out line away from the elements. */
function isUnder({ x, y }: { x: number; y: number }, { blocks: { pattern: { place } } }: Pick<Board, "blocks">): boolean {
  return place.turn === 0 ? y < place.origin.y : x <= place.origin.x;
}

/** An item drawn thin, as it is before it is lined in. */
export function thinned(item: PathItem): PathItem {
  return { kind: "path", pen: "projection", segments: item.segments, closed: item.closed };
}
