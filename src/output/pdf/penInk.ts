// The one table from pen to PDF: layer, width, dash and ends. All ink is black.

import { PENS, type Pen, type PenName } from "../../drawing/pens";
import { numberText } from "./numberText";

/** Layers of the file by what is drawn, so that a reader may leave one out. */
export const LAYERS = {
  part: "Part", construction: "Construction", notes: "Dimensions and lettering", sheet: "Sheet",
} as const;

export type LayerName = keyof typeof LAYERS;

const LAYER_OF: Readonly<Record<Pen["role"], LayerName>> = {
  part: "part", construction: "construction", annotation: "notes", "in hand": "notes", "true length": "notes", sheet: "sheet",
};

/** The layer of what a pen draws. */
export function layerOf(pen: PenName): LayerName {
  const { role }: Pen = PENS[pen];
  return LAYER_OF[role];
}

/** Operators that take the pen in hand: width in mm, dash, butt ends for dashes and round ones else. */
export function penOperators(pen: PenName): string {
  const { width, dash }: Pen = PENS[pen];
  return `${numberText(width)} w [${dash.map(numberText).join(" ")}] 0 d ${dash.length > 0 ? 0 : 1} J`;
}
