import { useMemo } from "react";
import type { Board } from "../../drawing/board/board";
import type { Box } from "../../drawing/box";
import { projectionSymbol } from "../../drawing/projectionSymbol";
import { symbolCorner } from "../../drawing/board/symbolCorner";
import { boardWords } from "../words/board";
import { ItemView } from "./ItemView";

interface Props {
  readonly board: Board;
  readonly view: Box;
  readonly projection: "first" | "third";
}

/** The symbol of first or third angle, in a corner of the window that the drawing leaves free. */
export function SymbolView({ board, view, projection }: Props) {
  const items = useMemo(() => {
    const corner = symbolCorner(board, view);
    return corner ? projectionSymbol(projection, corner.at, corner.scale) : [];
  }, [board, view, projection]);
  return (
    <g className="symbol" data-projection={projection}>
      <title>{boardWords.symbol[projection]}</title>
      {items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </g>
  );
}
