// Where on the board does the projection symbol stand?

import type { Vec2 } from "../../core/index";
import type { Board } from "./board";
import { type Box, growBox } from "../box";
import { freeCorner } from "./freeCorner";
import { LETTERING } from "../lettering";
import { metricsFor } from "../metrics";

/** The symbol's scale for figures of the usual height, and how far it reaches about the middle of its frustum at scale 1, mm. */
const SCALE = 0.7;
const REACH: Box = { left: -6.5, right: 21.5, bottom: -6.5, top: 6.5 };

export interface SymbolCorner {
  /** Middle of the frustum, and the scale, for `projectionSymbol`. */
  readonly at: Vec2;
  readonly scale: number;
  readonly bounds: Box;
}

/** A corner of the window that no block of the board reaches into; null when all are taken. */
export function symbolCorner({ blocks, lettering }: Pick<Board, "blocks" | "lettering">, window: Box): SymbolCorner | null {
  const scale = (SCALE * lettering) / LETTERING;
  const { gap } = metricsFor(lettering);
  const inner = growBox(window, -3 * gap);
  const taken = Object.values(blocks).map(({ bounds }) => growBox(bounds, 2 * gap));
  const bounds = freeCorner(inner, taken, { width: scale * (REACH.right - REACH.left), height: scale * (REACH.top - REACH.bottom) });
  return bounds && { bounds, scale, at: { x: bounds.left - scale * REACH.left, y: bounds.bottom - scale * REACH.bottom } };
}
