import { tracedCrossings, type ReadLine, type Vec2 } from "../../core/index";
import { alongPaper } from "../../drawing/compared/drawnPaper";
import { placeKey, type ReadRow } from "../check/places";
import type { Check } from "../check/useCheck";
import type { Format } from "../quantity/format";
import { goToRow, useReadingOff } from "./readingOff";
import { rowPressed } from "./rowPressed";
import { stationName } from "./stationName";
import { isFromPicture, readText, takeReadings } from "./takeReading";

// What a press or a line drawn on the picture says.

/** A press at a point of the paper (mm) is the reading of the station it means; the next that has not been read off has its turn. */
export function pressedAt(check: Check, line: ReadLine, rows: readonly ReadRow[], point: Vec2, format: Format): void {
  const { turn, pressed, typed } = useReadingOff.getState();
  const space = alongPaper(check.piece, check.readings, 1);
  const index = rowPressed(rows, turn, point.x, space, pressed);
  const row = rows[index];
  if (!row) return;
  const key = placeKey({ line, at: row.at });
  const text = readText(point.y, format);
  const before = check.sheet.readings[key] ?? "";
  const passed = takeReadings(check, line, [{ row, text }], typed === "replaced");
  useReadingOff.setState({ pressed: { x: point.x, at: row.at }, level: point.y, said: { kind: passed.length > 0 ? "typed" : "taken", label: stationName(row), text, typed: before, key } });
  const later = rows.findIndex((one, i) => i > index && !isFromPicture(check, line, one));
  goToRow(later < 0 ? rows.length : later, rows);
}

/** A line drawn along the curve is the reading of every station whose element it crosses. */
export function traced(check: Check, line: ReadLine, rows: readonly ReadRow[], points: readonly Vec2[], format: Format): void {
  const heights = tracedCrossings(points, rows.map(({ at }) => alongPaper(check.piece, check.readings, at)));
  const wanted = rows.flatMap((row, i) => {
    const height = heights[i] ?? null;
    return height === null ? [] : [{ row, text: readText(height, format) }];
  });
  const passed = takeReadings(check, line, wanted, useReadingOff.getState().typed === "replaced");
  useReadingOff.setState({ said: { kind: "traced", count: wanted.length - passed.length, kept: passed.length }, pressed: null });
}
