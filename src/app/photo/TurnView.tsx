import { alongPaper, onDrawnPaper, type PaperPart } from "../../drawing/compared/drawnPaper";
import type { ReadRow } from "../check/places";
import type { Check } from "../check/useCheck";

interface Props {
  readonly check: Check;
  readonly parts: readonly PaperPart[];
  /** Height of letters, sheet mm. */
  readonly letters: number;
  /** The row whose turn it is. */
  readonly row: ReadRow;
}

/** The element whose turn it is, over the board. */
export function TurnView({ check: { piece, readings }, parts, letters, row }: Props) {
  const x = alongPaper(piece, readings, row.at);
  const foot = onDrawnPaper(parts, { x, y: 0 });
  const head = onDrawnPaper(parts, { x, y: piece.form.length * readings.scale });
  return (
    <g className="reading-turn" aria-hidden="true">
      <path className="line" d={`M${foot.x} ${-foot.y}L${head.x} ${-head.y}`} />
      <text className="letters" x={head.x} y={-head.y - letters * 0.4} fontSize={letters} textAnchor="middle">{row.label}</text>
    </g>
  );
}
