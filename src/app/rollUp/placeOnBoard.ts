import type { Board } from "../../drawing/board/board";
import { growBox, type Box } from "../../drawing/box";
import { freeBox } from "../../drawing/freeBox";
import { symbolCorner } from "../../drawing/board/symbolCorner";
import type { Size } from "../screen/useSize";

/** CSS pixels the roll-up needs at least: with its controls below the picture, or beside it. */
const leasts = [{ width: 260, height: 180 }, { width: 440, height: 140 }] as const;

/** CSS pixels it keeps from the drawing and from the edge of the board. */
const gap = 10;

/** Where the board has room for the roll-up, in CSS pixels from the top left of an element of this size that shows `view` whole; null: nowhere. */
export function placeOnBoard(board: Pick<Board, "blocks" | "lettering">, view: Box, { width, height }: Size): { left: number; top: number; width: number; height: number } | null {
  const pxPerMm = Math.min(width / (view.right - view.left), height / (view.top - view.bottom));
  const window = growBox(view, -gap / pxPerMm);
  const blocks = Object.values(board.blocks).map(({ bounds }) => bounds);
  const symbol = symbolCorner(board, view)?.bounds;
  const taken = [...blocks, ...(symbol ? [symbol] : [])].map((box) => growBox(box, gap / pxPerMm));
  const [box] = leasts.flatMap(({ width, height }) => freeBox(window, taken, { width: width / pxPerMm, height: height / pxPerMm }) ?? []);
  if (!box) return null;
  return {
    left: width / 2 + (box.left - (view.left + view.right) / 2) * pxPerMm, top: height / 2 - (box.top - (view.top + view.bottom) / 2) * pxPerMm,
    width: (box.right - box.left) * pxPerMm, height: (box.top - box.bottom) * pxPerMm,
  };
}
