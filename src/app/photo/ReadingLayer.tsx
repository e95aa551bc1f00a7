import { useMemo, useRef, useState, type PointerEvent } from "react";
import { createPortal } from "react-dom";
import type { Vec2 } from "../../core/index";
import type { Board } from "../../drawing/board/board";
import { drawnPaper, onDrawnPaper, underOnPaper } from "../../drawing/compared/drawnPaper";
import { useCamera } from "../board/camera";
import { sheetPointAt } from "../board/view";
import { useCheck, type Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { point } from "../store/store";
import { useLaid } from "./laid";
import { pressedAt, traced } from "./readFromBoard";
import { ReadingKeys } from "./ReadingKeys";
import { rowsRead, useReadingOff } from "./readingOff";
import { TurnView } from "./TurnView";

/** The element whose turn it is, over the board, and the hand that reads off the picture. */
export function ReadingLayer({ board }: { board: Board }) {
  const check = useCheck();
  const laid = useLaid((state) => state.picture !== null);
  return check && laid ? <Reading board={board} check={check} /> : null;
}

function Reading({ board, check }: { board: Board; check: Check }) {
  const format = useFormat();
  const { line: wanted, way, turn } = useReadingOff();
  const parts = useMemo(() => drawnPaper(board, check.piece, check.readings), [board, check]);
  const trace = useRef<Vec2[]>([]);
  const [drawn, setDrawn] = useState<readonly Vec2[]>([]);
  const [paper, setPaper] = useState<Element | null>(null);
  const { rows, line } = rowsRead(check.places, wanted);
  const row = rows[Math.min(turn, rows.length - 1)];
  const { bounds } = board.blocks.pattern;

  const paperUnder = (event: { clientX: number; clientY: number; currentTarget: Element }): Vec2 | null => {
    const { shown } = useCamera.getState();
    const corner = event.currentTarget.closest("svg.drawing")?.getBoundingClientRect();
    return shown && corner ? underOnPaper(parts, sheetPointAt(shown.view, shown.size, { x: event.clientX - corner.left, y: event.clientY - corner.top })) : null;
  };
  const onTrace = (event: PointerEvent<SVGRectElement>) => {
    event.stopPropagation();
    const under = paperUnder(event);
    if (!under || (event.type !== "pointerdown" && trace.current.length === 0)) return;
    if (event.type === "pointerdown") event.currentTarget.setPointerCapture(event.pointerId);
    trace.current = event.type === "pointerdown" ? [under] : [...trace.current, under];
    setDrawn(trace.current);
    if (event.type !== "pointerup") return;
    traced(check, line, rows, trace.current, format);
    trace.current = [];
    setDrawn([]);
  };
  const stroke = drawn.map((place) => onDrawnPaper(parts, place)).map(({ x, y }) => `${x} ${-y}`).join("L");

  return (
    <g className="reading-layer" ref={(layer) => setPaper(layer?.closest(".board-paper") ?? null)}>
      <rect
        className="reading-paper" data-traced={way === "trace" || undefined}
        x={bounds.left} y={-bounds.top} width={bounds.right - bounds.left} height={bounds.top - bounds.bottom}
        {...(way === "trace" ? { onPointerDown: onTrace, onPointerMove: onTrace, onPointerUp: onTrace, onClick: (event) => event.stopPropagation() } : {
          // No station is pointed at while another is read off.
          onPointerMove: (event) => {
            event.stopPropagation();
            point(null);
          },
          onClick: (event) => {
            event.stopPropagation();
            const pressed = paperUnder(event);
            if (pressed) pressedAt(check, line, rows, pressed, format);
          },
        })}
      />
      {stroke && <path d={`M${stroke}`} className="reading-stroke" />}
      {/* Beside the drawing, which is one picture to those who do not see it. */}
      {row && paper && way === "press" && createPortal(<ReadingKeys check={check} parts={parts} line={line} rows={rows} row={row} />, paper)}
      {row && turn < rows.length && way === "press" && <TurnView check={check} parts={parts} letters={board.lettering} row={row} />}
    </g>
  );
}
