import { useMemo } from "react";
import { elementAt, type Development } from "../../core/index";
import type { Board } from "../../drawing/board/board";
import type { Figures } from "../../drawing/figures";
import { elementLines, projectionLines } from "../../drawing/station/projectionLines";
import { useGirthInHand } from "../store/between";
import { selectStation } from "../store/select";
import { useApp } from "../store/store";
import { ItemView } from "./ItemView";

interface Props {
  readonly board: Board;
  readonly development: Development;
  readonly figures: Figures;
  /** The projection lines lie under the drawing, so that its figures stay clear; the element itself lies over it. */
  readonly part: "under" | "over";
}

/** The station in hand in every view, or the element between stations, or the projection lines that carry it over. */
export function StationLayer({ board, development, figures, part }: Props) {
  const station = useApp(selectStation);
  const girth = useGirthInHand();
  const items = useMemo(() => {
    const [piece] = development.pieces;
    const all =
      piece && girth !== null ? elementLines(board, piece, elementAt(piece, girth), { figures, ref: { clause: "stations" } })
      : station === null ? []
      : projectionLines(board, development, station, { figures });
    return all.filter((item) => ("pen" in item && item.pen === "projection") === (part === "under"));
  }, [board, development, station, girth, figures, part]);
  return (
    <g className={part === "under" ? "station-projections" : "station-layer"}>
      {items.map((item, i) => (
        <ItemView key={`${girth ?? station}.${i}`} item={item} />
      ))}
    </g>
  );
}
