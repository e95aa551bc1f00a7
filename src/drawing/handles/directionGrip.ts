// The direction of a cut, held on the circle of the view along the axis.

import { type Cut, type Piece, type Vec2, degrees, radians, wrapTurn } from "../../core/index";
import type { Board } from "../board/board";
import { sheetAngle } from "../view/views";
import type { SizeGrip } from "./grip";

/** A grip in sheet coordinates; null for a square cut, which has no direction. `swing` (radians): how far beside it an opening stands. */
export function directionGrip(cut: Cut, board: Board, piece: Piece, swing: number): SizeGrip | null {
  if (cut.kind === "plane" && cut.angle === 0) return null;
  const name = board.views.top.kind === "end-on" ? "top" : "side";
  const view = board.views[name];
  if (view.kind !== "end-on") return null;
  const { origin, scale } = board.blocks[name].place;
  const reach = piece.form.cutRadius * scale;
  const pointFor = (direction: number): Vec2 => {
    const angle = sheetAngle(view, radians(direction) + swing);
    return { x: origin.x + reach * Math.cos(angle), y: origin.y + reach * Math.sin(angle) };
  };
  return {
    kind: "size", name: "direction", field: "direction", quantity: "angle", value: cut.direction, point: pointFor(cut.direction), pointFor,
    valueAt: ({ x, y }) => degrees(wrapTurn(view.sense * (Math.atan2(y - origin.y, x - origin.x) - view.start) - swing)),
    put: (direction) => ({ direction: ((direction % 360) + 360) % 360 }),
  };
}
