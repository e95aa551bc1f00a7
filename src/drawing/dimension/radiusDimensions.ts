// The radius of each shaped end, in the view that sees it as a true arc: an arrow from the side taken away.

import { type Job, type Segment, type Vec2, segmentPoint } from "../../core/index";
import { boundsOfItem } from "../bounds";
import type { ClearSpace } from "../clearSpace";
import type { Item, Ref } from "../display";
import { radiusField } from "./figureField";
import type { Figures } from "../figures";
import { leader } from "./leader";
import type { Metrics } from "../metrics";
import { type Place, segmentOnSheet } from "../place";
import type { ViewLine } from "../view/viewGeometry";

type Arc = Extract<Segment, { kind: "arc" }>;

const PARTS = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9];

/** One arrow and figure for each different radius of each shaped cut that `lines` show as arcs. */
export function radiusDimensions(
  job: Job, lines: readonly ViewLine[], place: Place, figures: Figures, metrics: Metrics, space: ClearSpace,
): Item[] {
  return job.part.cuts.flatMap((cut) => {
    if (cut.kind !== "shaped") return [];
    const ref: Ref = { clause: `cut:${cut.id}` };
    const arcs = lines
      .filter((line) => line.pen === "visible edge" && line.ref.clause === ref.clause)
      .flatMap(({ segments }) => segments.filter((segment): segment is Arc => segment.kind === "arc"));
    const texts = new Set<string>();
    return arcs.flatMap((arc) => {
      const radius = Math.hypot(arc.from.x - arc.centre.x, arc.from.y - arc.centre.y);
      const text = `R${figures.length(radius)}`;
      if (texts.has(text)) return [];
      texts.add(text);
      const items = radiusLeader(segmentOnSheet(place, arc) as Arc, awayFrom(cut.end, place), text, { ...ref, field: radiusField(cut, radius) }, metrics, space);
      space.take(items);
      return items;
    });
  });
}

/** The direction on the sheet in which the end's material was taken away. */
function awayFrom(end: "top" | "bottom", { turn }: Place): Vec2 {
  const sign = end === "top" ? 1 : -1;
  return turn === 0 ? { x: 0, y: sign } : { x: sign, y: 0 };
}

/** An arrow along a radius, on the side of `away`, where the paper is clear for its figure. */
function radiusLeader(arc: Arc, away: Vec2, text: string, ref: Ref, metrics: Metrics, space: ClearSpace): Item[] {
  for (const length of [2.5, 3.5, 5, 7]) {
    for (const part of PARTS) {
      const tip = segmentPoint(arc, part);
      const raw = { x: tip.x - arc.centre.x, y: tip.y - arc.centre.y };
      const reach = length * metrics.arrow * (raw.x * away.x + raw.y * away.y >= 0 ? 1 : -1) / Math.hypot(raw.x, raw.y);
      const items = leader(tip, { x: tip.x + raw.x * reach, y: tip.y + raw.y * reach }, text, ref, metrics);
      if (space.isFree(boundsOfItem(items[3])) && space.isFree(boundsOfItem(items[1]))) return items;
    }
  }
  return [];
}
