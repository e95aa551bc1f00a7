import { useEffect, useMemo, useRef, type KeyboardEvent } from "react";
import type { Board } from "../../drawing/board";
import type { Box } from "../../drawing/box";
import { alongPaper, drawnPaper, onDrawnPaper } from "../../drawing/drawnPaper";
import { windowPoint } from "../board/view";
import { useCheck, type Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import type { Size } from "../screen/useSize";
import { photoWords } from "../words/photo";
import { useLaid } from "./laid";
import { pressedAt } from "./readFromBoard";
import { goToRow, rowsRead, useReadingOff } from "./readingOff";
import { stationName } from "./stationName";
import { readText } from "./takeReading";

interface Props {
  readonly board: Board;
  /** What is seen of the sheet, in an element of this size. */
  readonly view: Box;
  readonly size: Size;
}

/** mm on the paper by key. */
const steps: Readonly<Record<string, number>> = { ArrowUp: 0.2, ArrowDown: -0.2, PageUp: 2, PageDown: -2 };

/** A cross on the element whose turn it is, for the keys: moved up and down, and read off with Enter. */
export function ReadingKeys(props: Props) {
  const check = useCheck();
  const laid = useLaid((state) => state.picture !== null);
  const press = useReadingOff((state) => state.way === "press");
  return check && laid && press ? <Cross {...props} check={check} /> : null;
}

function Cross({ board, view, size, check }: Props & { check: Check }) {
  const format = useFormat();
  const { line: wanted, turn, level: at } = useReadingOff();
  const { piece, readings, places } = check;
  const parts = useMemo(() => drawnPaper(board, piece, readings), [board, piece, readings]);
  const cross = useRef<HTMLDivElement>(null);
  const focus = useLaid((state) => state.focus);
  useEffect(() => {
    if (!focus) return;
    cross.current?.focus({ preventScroll: false });
    useLaid.setState({ focus: false });
  }, [focus]);
  const { line, rows } = rowsRead(places, wanted);
  const row = rows[Math.min(turn, rows.length - 1)];
  if (!row) return null;
  const height = piece.form.length * readings.scale;
  const level = Math.min(height, at ?? height / 2);
  const point = { x: alongPaper(piece, readings, row.at), y: level };
  const there = windowPoint(view, size, onDrawnPaper(parts, point));

  const onKeyDown = (event: KeyboardEvent) => {
    const by = steps[event.key];
    if (by !== undefined) useReadingOff.setState({ level: Math.min(height, Math.max(0, level + by)) });
    else if (event.key === "ArrowLeft") goToRow(turn - 1, rows);
    else if (event.key === "ArrowRight") goToRow(turn + 1, rows);
    else if (event.key === "Enter") pressedAt(check, line, rows, point, format);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div
      ref={cross} className="reading-cross" style={{ left: there.x, top: there.y }} tabIndex={0} onKeyDown={onKeyDown}
      role="slider" aria-label={photoWords.level(stationName(row))} aria-description={photoWords.levelHelp} aria-orientation="vertical"
      aria-valuemin={0} aria-valuemax={height} aria-valuenow={level} aria-valuetext={`${readText(level, format)} ${format.unit}`}
    />
  );
}
