import { useMemo } from "react";
import type { Development } from "../../../core/index";
import type { Board } from "../../../drawing/board/board";
import { smoothOverlay } from "../../../drawing/compared/smoothOverlay";
import { useSettings } from "../../store/settings";
import { ItemView } from "../ItemView";
import { straysOf } from "./strays";

/** The smooth curve over the pattern, and a lettered circle where each end strays most. */
export function SmoothLayer({ board, development }: { board: Board; development: Development }) {
  const tolerance = useSettings((settings) => settings.tolerance);
  const items = useMemo(() => {
    const [piece] = development.pieces;
    if (!piece) return [];
    return straysOf(piece, tolerance).flatMap(({ end, letter, gap }) => (gap ? smoothOverlay(board, piece, { end, gap, letter }) : []));
  }, [board, development, tolerance]);
  return (
    <g className="smooth-layer">
      {items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </g>
  );
}
