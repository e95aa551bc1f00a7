import { useMemo } from "react";
import type { Development } from "../../core/index";
import type { Board } from "../../drawing/board";
import type { Figures } from "../../drawing/figures";
import { projectionLines } from "../../drawing/projectionLines";
import { selectStation } from "../store/select";
import { useApp } from "../store/store";
import { ItemView } from "./ItemView";

/** The station in hand in every view, with the projection lines that carry it over. */
export function StationLayer({ board, development, figures }: { board: Board; development: Development; figures: Figures }) {
  const station = useApp(selectStation);
  const items = useMemo(() => (station === null ? [] : projectionLines(board, development, station, { figures })), [board, development, station, figures]);
  return (
    <g className="station-layer">
      {items.map((item, i) => (
        <ItemView key={`${station}.${i}`} item={item} />
      ))}
    </g>
  );
}
