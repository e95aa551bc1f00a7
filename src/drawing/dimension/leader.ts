// A note with an arrow to what it speaks of.

import type { Vec2 } from "../../core/index";
import type { Item, Ref, TextItem } from "../display";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import { stroke } from "../strokes";

/** An arrow from `end` to `tip` and a level shelf at `end` that carries the text; the text comes last. */
export function leader(tip: Vec2, end: Vec2, text: string, ref: Ref, metrics: Metrics): [Item, Item, Item, TextItem] {
  const width = textWidth(text, metrics.lettering);
  const shelf = end.x < tip.x - 1e-6 ? -1 : 1;
  return [
    stroke("dimension", tip, end, ref),
    stroke("dimension", end, { x: end.x + shelf * width, y: end.y }, ref),
    { kind: "arrowhead", pen: "dimension", tip, direction: Math.atan2(tip.y - end.y, tip.x - end.x), length: metrics.arrow, ref },
    { kind: "text", pen: "lettering", text, height: metrics.lettering, align: shelf > 0 ? "start" : "end", turn: 0, ref, at: { x: end.x, y: end.y + metrics.gap } },
  ];
}
