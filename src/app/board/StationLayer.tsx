import { useMemo } from "react";
import { elementAt, type Development } from "../../core/index";
import type { Board } from "../../drawing/board";
import type { Figures } from "../../drawing/figures";
import { elementLines, projectionLines } from "../../drawing/projectionLines";
import { useGirthInHand } from "../store/between";
import { selectStation } from "../store/select";
import { useApp } from "../store/store";
import { ItemView } from "./ItemView";

/** The station in hand in every view, or the element between stations, with the projection lines that carry it over. */
export function StationLayer({ board, development, figures }: { board: Board; development: Development; figures: Figures }) {
  const station = useApp(selectStation);
  const girth = useGirthInHand();
  const items = useMemo(() => {
    const [piece] = development.pieces;
    if (piece && girth !== null) return elementLines(board, piece, elementAt(piece, girth), { figures, ref: { clause: "stations" } });
    return station === null ? [] : projectionLines(board, development, station, { figures });
  }, [board, development, station, girth, figures]);
  return (
    <g className="station-layer">
      {items.map((item, i) => (
        <ItemView key={`${girth ?? station}.${i}`} item={item} />
      ))}
    </g>
  );
}
