import { lazy, Suspense, useEffect, useMemo } from "react";
import type { Board } from "../../drawing/board";
import type { Box } from "../../drawing/box";
import { useTouch } from "../screen/touch";
import type { Size } from "../screen/useSize";
import { placeOnBoard, useRollUpPlace } from "./place";

const RollUp = lazy(() => import("./RollUp").then((module) => ({ default: module.RollUp })));

interface Props {
  readonly board: Board;
  /** What the window shows of the sheet, and its size in CSS pixels. */
  readonly view: Box;
  readonly size: Size;
  /** CSS pixels a sheet mm. */
  readonly px: number;
}

/** The roll-up in the free corner of the board, where there is one. It is fetched when the page is first touched, not with the page. */
export function BoardCorner({ board, view, size, px }: Props) {
  const place = useMemo(() => placeOnBoard(board, view, size), [board, view, size]);
  const onBoard = place !== null;
  useEffect(() => useRollUpPlace.setState({ onBoard }), [onBoard]);
  const touched = useTouch((state) => state.touched);
  if (!place || !touched) return null;
  return (
    <div className="board-corner" style={place}>
      <Suspense fallback={null}>
        <RollUp px={px} />
      </Suspense>
    </div>
  );
}
