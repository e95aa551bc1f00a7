// Which place on the girth does a pointer mean, between stations too?

import { type Piece, type Vec2, girthAt } from "../../core/index";
import type { Board } from "../board/board";
import type { Box } from "../box";
import { elementUnder } from "./elementUnder";
import { fromSheet } from "../place";
import { SLACK } from "./stationAt";
import { sheetAngle } from "../view/views";

/**
 * The place on the girth (mm from the seam) under a point of the sheet: in the pattern along the stretch-out, on the circle by its
 * direction, in the other views that of the element seen there; null elsewhere. Rounded to the coarsest of 1, 2 and 5 times a power of
 * ten that is no coarser than `grain` (sheet mm).
 */
export function girthUnder({ blocks, views }: Pick<Board, "blocks" | "views">, piece: Piece, point: Vec2, grain: number): number | null {
  const { form, pattern } = piece;
  const name = (["pattern", "front", "top", "side"] as const).find((block) => holds(blocks[block].bounds, point));
  if (!name) return null;
  const { place } = blocks[name];
  const step = roundStep(grain / place.scale);
  const rounded = (girth: number) => Math.min(pattern.girth, Math.max(0, Math.round(girth / step) * step));
  if (name === "pattern") return rounded(fromSheet(place, point).x);
  const view = views[name];
  if (view.kind === "broadside") return rounded(girthAt(pattern, form.radius, elementUnder(piece, view, fromSheet(place, point), SLACK / place.scale)));
  const angle = Math.atan2(point.y - place.origin.y, point.x - place.origin.x);
  return rounded(girthAt(pattern, form.radius, view.sense * (angle - sheetAngle(view, 0))));
}

/** The coarsest of 1, 2, 5, 10 … and their parts that is at most `most` (> 0). */
export function roundStep(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2].find((times) => times * power <= most * (1 + 1e-9)) ?? 1) * power;
}

function holds({ left, right, bottom, top }: Box, { x, y }: Vec2): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}
