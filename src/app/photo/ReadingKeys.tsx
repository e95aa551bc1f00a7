import { useEffect, useRef, type KeyboardEvent } from "react";
import type { ReadLine } from "../../core/index";
import { alongPaper, onDrawnPaper, type PaperPart } from "../../drawing/compared/drawnPaper";
import { useCamera } from "../board/camera";
import { windowPoint } from "../board/view";
import type { ReadRow } from "../check/places";
import type { Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { photoWords } from "../words/photo";
import { useLaid } from "./laid";
import { pressedAt } from "./readFromBoard";
import { goToRow, useReadingOff } from "./readingOff";
import { stationName } from "./stationName";
import { readText } from "./takeReading";

interface Props {
  readonly check: Check;
  readonly parts: readonly PaperPart[];
  readonly line: ReadLine;
  readonly rows: readonly ReadRow[];
  /** The one whose turn it is; the last when all have had theirs. */
  readonly row: ReadRow;
}

/** mm on the paper by key. */
const steps: Readonly<Record<string, number>> = { ArrowUp: 0.2, ArrowDown: -0.2, PageUp: 2, PageDown: -2 };

/** A cross on the element whose turn it is, for the keys: moved up and down, and read off with Enter. */
export function ReadingKeys({ check, parts, line, rows, row }: Props) {
  const format = useFormat();
  const at = useReadingOff((state) => state.level);
  const shown = useCamera((state) => state.shown);
  const cross = useRef<HTMLDivElement>(null);
  const focus = useLaid((state) => state.focus);
  useEffect(() => {
    if (!focus || !cross.current) return;
    cross.current.focus();
    useLaid.setState({ focus: false });
  }, [focus, shown]);
  if (!shown) return null;
  const { piece, readings } = check;
  const height = piece.form.length * readings.scale;
  const level = Math.min(height, at ?? height / 2);
  const point = { x: alongPaper(piece, readings, row.at), y: level };
  const there = windowPoint(shown.view, shown.size, onDrawnPaper(parts, point));

  const onKeyDown = (event: KeyboardEvent) => {
    const by = steps[event.key];
    const turn = rows.indexOf(row);
    if (by !== undefined) useReadingOff.setState({ level: Math.min(height, Math.max(0, level + by)) });
    else if (event.key === "ArrowLeft") goToRow(turn - 1, rows);
    else if (event.key === "ArrowRight") goToRow(Math.min(turn + 1, rows.length - 1), rows);
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
