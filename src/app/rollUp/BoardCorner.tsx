import { memo, useEffect, useMemo } from "react";
import type { Board } from "../../drawing/board/board";
import type { Box } from "../../drawing/box";
import { SmoothDetails } from "../board/smooth/SmoothDetails";
import { useSmooth } from "../board/smooth/shown";
import { afterPress } from "../screen/afterPress";
import type { Size } from "../screen/useSize";
import { useRollUpPlace } from "./place";
import { placeOnBoard } from "./placeOnBoard";
import { RollUp } from "./RollUp";

interface Props {
  /** The whole board as it fits the window. */
  readonly board: Board;
  /** What the window then shows of the sheet, and its size in CSS pixels. */
  readonly view: Box;
  readonly size: Size;
  /** CSS pixels a sheet mm. */
  readonly px: number;
  /** Whether the board is looked at more closely, so that the corner is covered by the drawing. */
  readonly away: boolean;
}

/** The free corner of the board, where there is one: the roll-up, or how far the smooth curve strays while that is shown. */
export const BoardCorner = memo(function BoardCorner({ board, view, size, px, away }: Props) {
  const place = useMemo(() => placeOnBoard(board, view, size), [board, view, size]);
  const smooth = useSmooth((state) => state.shown);
  const fits = place !== null;
  const onBoard = useRollUpPlace((state) => state.onBoard);
  // How far the curve strays, once said at the foot of the board, stays there: what it takes of the board's height decides whether it fits.
  useEffect(() => afterPress(() => useRollUpPlace.setState((was) => ({ onBoard: fits && (was.onBoard || !smooth) }))), [fits, smooth]);
  if (!place || !onBoard || (away && !smooth)) return null;
  return (
    <div className="board-corner" data-over={away || undefined} style={place}>
      {smooth ? <SmoothDetails px={px} /> : <RollUp px={px} />}
    </div>
  );
});
