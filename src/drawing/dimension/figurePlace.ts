// Where along its dimension line does a figure stand by itself?

import { textWidth } from "../lettering";
import type { Metrics } from "../metrics";

export interface FigurePlace {
  /** Middle of the figure along the line. */
  readonly at: number;
  /** What line, arrowheads and figure take along the line. */
  readonly taken: readonly [number, number];
}

/** In the middle of the measured interval when it fits there, else beyond its high end. */
export function figurePlace(low: number, high: number, text: string, metrics: Metrics): FigurePlace {
  const width = textWidth(text, metrics.lettering);
  const outer = high - low >= 2.5 * metrics.arrow ? 0 : 2 * metrics.arrow;
  if (width + metrics.arrow <= high - low) return { at: (low + high) / 2, taken: [low - outer, high + outer] };
  const at = high + Math.max(outer, metrics.arrow) + width / 2;
  return { at, taken: [low - outer, at + width / 2] };
}
