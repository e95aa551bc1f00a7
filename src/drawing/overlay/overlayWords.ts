// The words of an overlay.

import type { TradeWords } from "../tradeWords";

export interface OverlayWords {
  readonly title: string;
  readonly student: string;
  readonly allowed: string;
  readonly exact: string;
  readonly stepped: string;
  readonly checkRuler: (length: number) => string;
  readonly cautions: readonly string[];
}

export function overlayWords({ pattern }: TradeWords): OverlayWords {
  return {
    title: "Overlay",
    student: "Name",
    allowed: "Allowed on the paper, mm",
    exact: "π × diameter",
    stepped: "stepped off with chords",
    checkRuler: (length) => `Check the ${length} mm ruler before laying it on. Print at 100 %, never fitted.`,
    cautions: [
      `Lay it over the drawn ${pattern}, base line on base line, station 0 on station 0; on film, or both sheets against a light.`,
      "The drawn edge should stay between the two whole lines; the dashed one is the true edge.",
    ],
  };
}
