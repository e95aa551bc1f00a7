// One dimension line with its arrowheads and figure, along x or y of the sheet. Extension lines are the lanes' business.

import type { Vec2 } from "../../core/index";
import type { ArrowheadItem, Item, Ref, TextItem } from "../display";
import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";
import { stroke } from "../strokes";

export interface DimensionLine {
  readonly axis: "horizontal" | "vertical";
  /** The measured interval along the axis, low < high, sheet mm. */
  readonly low: number;
  readonly high: number;
  /** Where the line stands across the axis. */
  readonly across: number;
  /** Middle of the figure along the axis. */
  readonly figureAt: number;
  readonly text: string;
  readonly ref?: Ref | undefined;
}

/**
 * The items of a dimension line. The figure stands over a level line, left of an upright one and reads from the right.
 * Arrowheads go inside when there is room for both, else outside; the line runs on under a figure that stands beyond an end.
 */
export function dimensionLine(line: DimensionLine, metrics: Metrics): Item[] {
  const { axis, low, high, across, figureAt, text } = line;
  const { arrow, gap, lettering } = metrics;
  const at = (along: number): Vec2 => (axis === "horizontal" ? { x: along, y: across } : { x: across, y: along });
  const inside = high - low >= 2.5 * arrow;
  const outer = inside ? 0 : 2 * arrow;
  const half = textWidth(text, lettering) / 2;
  const beyond = figureAt + half > high + 1e-9 || figureAt - half < low - 1e-9;
  const from = Math.min(low - outer, beyond && figureAt < low ? figureAt - half : low);
  const to = Math.max(high + outer, beyond && figureAt > high ? figureAt + half : high);
  const upright = axis === "vertical";
  const ref = line.ref && { ref: line.ref };
  const head = (tip: number, forward: boolean): ArrowheadItem => ({
    kind: "arrowhead", pen: "dimension", tip: at(tip), length: arrow, direction: (upright ? Math.PI / 2 : 0) + (forward ? 0 : Math.PI), ...ref,
  });
  const figure: TextItem = {
    kind: "text", pen: "lettering", text, height: lettering, align: "middle", turn: upright ? Math.PI / 2 : 0, ...ref,
    at: upright ? { x: across - gap, y: figureAt } : { x: figureAt, y: across + gap },
  };
  return [stroke("dimension", at(from), at(to), line.ref), head(low, !inside), head(high, inside), figure];
}
