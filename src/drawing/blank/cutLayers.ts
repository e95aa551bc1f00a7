// On which layer of a cut file does a pen draw? One table of plain words for every format.

import type { PenName } from "../pens";

/** All layers, what is cut first. "note" holds lettering and what leads to it. */
export const CUT_LAYERS = ["cut", "slit", "bend", "seam", "quarter", "station", "prick", "mark", "axis", "note"] as const;

export type CutLayer = (typeof CUT_LAYERS)[number];

const LAYER: Readonly<Partial<Record<PenName, CutLayer>>> = {
  outline: "cut", opening: "cut", slit: "slit", "bend line": "bend", "seam line": "seam", "quarter line": "quarter", "station tick": "station",
  "prick point": "prick", "sheet mark": "mark", "centre line": "axis",
};

/** The layer of a pen. */
export function layerOf(pen: PenName): CutLayer {
  return LAYER[pen] ?? "note";
}
