// The two ends of an element: its lowest and highest kept place, openings left aside.

import type { Cutter } from "../cut/cutter";
import type { Span } from "../trim/spans";
import { stretchesOn } from "../trim/stretches";

/** Heights (mm) of the bottom and top end of a span's element at θ; null when nothing is kept there. */
export function endHeights(cutters: readonly Cutter[], span: Span, theta: number): { bottom: number; top: number } | null {
  const stretches = stretchesOn(cutters, span, theta);
  const first = stretches[0];
  const last = stretches.at(-1);
  return first && last ? { bottom: first.from, top: last.to } : null;
}
