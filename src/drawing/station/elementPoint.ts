// Where does a point of an element fall in a view of the board?

import type { Piece, Vec2 } from "../../core/index";
import type { Board } from "../board/board";
import { onSheet } from "../place";
import { type ViewName, sheetAngle, sideways } from "../view/views";

/** The point of the sheet for the element at θ (radians) and a height z (mm) in a view; on the circle z makes no difference. */
export function elementPoint(board: Pick<Board, "blocks" | "views">, name: ViewName, piece: Piece, theta: number, z: number): Vec2 {
  const { place } = board.blocks[name];
  const view = board.views[name];
  const { cutRadius: radius } = piece.form;
  if (view.kind === "broadside") return onSheet(place, { x: sideways(view, radius, theta), y: z });
  const angle = sheetAngle(view, theta);
  return onSheet({ ...place, turn: 0 }, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
}
