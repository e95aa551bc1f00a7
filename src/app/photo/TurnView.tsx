import { useEffect, useRef, type KeyboardEvent } from "react";
import type { ReadLine } from "../../core/index";
import { alongPaper, onDrawnPaper, type PaperPart } from "../../drawing/drawnPaper";
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
  /** Height of letters, sheet mm. */
  readonly letters: number;
  readonly line: ReadLine;
  readonly rows: readonly ReadRow[];
  /** The one whose turn it is. */
  readonly row: ReadRow;
}

/** mm by key. */
const steps: Readonly<Record<string, number>> = { ArrowUp: 0.2, ArrowDown: -0.2, PageUp: 2, PageDown: -2 };

/** The element whose turn it is as a line, and on it a cross that is moved by the keys and read with Enter. */
export function TurnView({ check, parts, letters, line, rows, row }: Props) {
  const format = useFormat();
  const { piece, readings } = check;
  const turnRef = useRef<SVGGElement>(null);
  const focus = useLaid((state) => state.focus);
  useEffect(() => {
    if (!focus) return;
    turnRef.current?.focus();
    useLaid.setState({ focus: false });
  }, [focus]);
  const height = piece.form.length * readings.scale;
  const level = Math.min(height, useReadingOff((state) => state.level) ?? height / 2);
  const x = alongPaper(piece, readings, row.at);
  const [foot, head, there] = [0, height, level].map((y) => onDrawnPaper(parts, { x, y }));
  if (!foot || !head || !there) return null;
  const onKeyDown = (event: KeyboardEvent) => {
    const by = steps[event.key];
    const turn = rows.indexOf(row);
    if (by !== undefined) useReadingOff.setState({ level: Math.min(height, Math.max(0, level + by * readings.scale)) });
    else if (event.key === "ArrowLeft") goToRow(turn - 1, rows);
    else if (event.key === "ArrowRight") goToRow(turn + 1, rows);
    else if (event.key === "Enter") pressedAt(check, line, rows, { x, y: level }, format);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <g
      ref={turnRef} className="reading-turn" role="slider" tabIndex={0} aria-label={photoWords.level(stationName(row))} aria-description={photoWords.levelHelp}
      aria-orientation="vertical" aria-valuemin={0} aria-valuemax={height} aria-valuenow={level} aria-valuetext={`${readText(level, format)} ${format.unit}`} onKeyDown={onKeyDown}
    >
      <path className="line" d={`M${foot.x} ${-foot.y}L${head.x} ${-head.y}`} />
      <path className="line reading-level" d={`M${there.x - letters} ${-there.y}h${2 * letters}m${-letters} ${-letters}v${2 * letters}`} />
      <text className="letters" x={head.x} y={-head.y - letters * 0.4} fontSize={letters} textAnchor="middle">{row.label}</text>
    </g>
  );
}
