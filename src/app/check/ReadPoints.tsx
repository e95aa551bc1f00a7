import { useMemo } from "react";
import type { Board } from "../../drawing/board/board";
import { measuredPoints } from "../../drawing/compared/measuredPoints";
import { ItemView } from "../board/ItemView";
import { useExaggeration } from "./exaggeration";
import { useCheck } from "./useCheck";

/** What was read, as points over the true pattern. */
export function ReadPoints({ board }: { board: Board }) {
  const check = useCheck();
  const times = useExaggeration((state) => state.times);
  const items = useMemo(() => (check?.verdict ? measuredPoints(board, check.piece, check.readings, check.verdict.judged, { times }) : []), [board, check, times]);
  return (
    <g className="check-layer">
      {items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </g>
  );
}
