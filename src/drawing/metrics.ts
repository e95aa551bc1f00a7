// How far apart do dimension lines stand? Drawing habits in mm for figures 3.5 mm high, kept in proportion to other heights.

import { LETTERING } from "./lettering";

export interface Metrics {
  /** Height of figures, mm. */
  readonly lettering: number;
  /** From the view to the first dimension line, and from line to line. */
  readonly first: number;
  readonly lane: number;
  /** How far an extension line runs past its dimension line, and a centre line past the outline. */
  readonly past: number;
  /** Between a figure and the line under it. */
  readonly gap: number;
  /** Length of an arrowhead. */
  readonly arrow: number;
  /** Half a station tick. */
  readonly tick: number;
  /** Between blocks of the board. */
  readonly between: number;
}

/** The distances that go with a lettering height (mm, > 0). @throws RangeError for any other height. */
export function metricsFor(lettering: number): Metrics {
  if (!(lettering > 0)) throw new RangeError(`invalid lettering height: ${lettering}; not in (0, ∞)`);
  const k = lettering / LETTERING;
  return { lettering, first: 10 * k, lane: 8 * k, past: 2 * k, gap: k, arrow: lettering * 0.8, tick: 1.25 * k, between: 8 * k };
}
