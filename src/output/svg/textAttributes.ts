// Lettering in SVG: where it stands and how large the type is.

import type { TextItem } from "../../drawing/display";
import { CAP_HEIGHT } from "../../drawing/lettering";
import { roundNumber } from "./roundNumber";

export interface TextAttributes {
  readonly x: string;
  readonly y: string;
  readonly "font-size": string;
  readonly "text-anchor": "start" | "middle" | "end";
  readonly transform?: string;
}

/** Attributes of a text element in user units of one sheet mm. */
export function textAttributes({ at, height, align, turn }: TextItem): TextAttributes {
  const x = roundNumber(at.x), y = roundNumber(-at.y);
  const degrees = roundNumber((-turn * 180) / Math.PI);
  return {
    x, y, "font-size": roundNumber(height / CAP_HEIGHT), "text-anchor": align,
    ...(degrees !== "0" && { transform: `rotate(${degrees} ${x} ${y})` }),
  };
}
