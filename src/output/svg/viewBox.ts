// A box of the sheet as an SVG viewBox: y changes its sign.

import type { Box } from "../../drawing/box";
import { roundNumber } from "./roundNumber";

/** "left -top width height". */
export function viewBox({ left, right, bottom, top }: Box): string {
  return [left, -top, right - left, top - bottom].map(roundNumber).join(" ");
}
