// How each layer looks: one row a layer.

import type { CutLayer } from "../../drawing/blank/cutLayers";

export interface LayerLook {
  /** Index of the format's own colours: 7 black or white, 1 red, 3 green, 4 cyan, 5 blue, 6 magenta, 8 grey. */
  readonly colour: number;
  readonly line: "CONTINUOUS" | "DASHES" | "CHAIN";
}

export const LAYER_TABLE: Readonly<Record<CutLayer, LayerLook>> = {
  cut: { colour: 7, line: "CONTINUOUS" },
  slit: { colour: 1, line: "CONTINUOUS" },
  bend: { colour: 5, line: "CONTINUOUS" },
  seam: { colour: 5, line: "DASHES" },
  quarter: { colour: 4, line: "CHAIN" },
  station: { colour: 8, line: "CONTINUOUS" },
  prick: { colour: 6, line: "CONTINUOUS" },
  mark: { colour: 3, line: "CONTINUOUS" },
  axis: { colour: 4, line: "CHAIN" },
  note: { colour: 8, line: "CONTINUOUS" },
};

/** Lengths of dash (above 0) and gap (below 0) of the broken lines, mm. */
export const LINE_PATTERNS: Readonly<Record<Exclude<LayerLook["line"], "CONTINUOUS">, readonly number[]>> = {
  DASHES: [3, -0.75],
  CHAIN: [6, -0.75, 0.25, -0.75],
};

/** A layer's name in the file. */
export function layerName(layer: CutLayer): string {
  return layer.toUpperCase();
}
