import { memo, useMemo } from "react";
import type { Development } from "../../core/index";
import type { Board } from "../../drawing/board/board";
import { stationProjections, stationsApart } from "../../drawing/station/stationProjections";
import { ItemView } from "./ItemView";
import { useProjected } from "./projected";

/** The projection lines of the kept stations or of all, under the drawing. */
export const ProjectionLayer = memo(function ProjectionLayer({ board, development }: { board: Board; development: Development }) {
  const whose = useProjected((state) => state.whose);
  const kept = useProjected((state) => state.kept);
  const items = useMemo(() => {
    const [piece] = development.pieces;
    return piece ? stationProjections(board, development, whose === "all" ? stationsApart(board, piece) : kept) : [];
  }, [board, development, whose, kept]);
  return (
    <g className="projections">
      {items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </g>
  );
});
