import { degrees, type Piece, type Station } from "../../core/index";
import type { Format } from "../quantity/format";
import { words } from "../words/interface";

// The figures of the station table, written out: one row a kind of figure, one cell a station.

export interface RodRow {
  readonly name: string;
  readonly cells: readonly string[];
}

/** The rows under the rod: direction, place on the girth, ordinates of both ends, element length, and openings where there are any. */
export function rodRows(piece: Piece, format: Format): RodRow[] {
  const { table } = words;
  const { attitude } = piece.form;
  const row = (name: string, cell: (station: Station) => string): RodRow => ({ name, cells: piece.stations.map(cell) });
  const end = (height: number | null) => (height === null ? table.none : format.length(height));
  return [
    row(table.angle, (station) => format.angle(directionOf(station.theta))),
    row(table.girth, (station) => format.length(station.girth)),
    row(table.top[attitude], (station) => end(station.top)),
    row(table.bottom[attitude], (station) => end(station.bottom)),
    row(table.length, (station) => format.length(station.length)),
    ...(piece.stations.some((station) => station.openings.length)
      ? [row(table.openings, (station) => station.openings.map((gap) => openingText(gap, format)).join(", ") || table.none)]
      : []),
  ];
}

/** A direction in radians as degrees from the front, 0 to under 360. */
export function directionOf(theta: number): number {
  const angle = degrees(theta) % 360;
  // Rounded to a millionth of a degree, so that a whole turn less rounding noise reads 0 and not 360.
  return (Math.round((angle + 360) * 1e6) / 1e6) % 360;
}

function openingText({ from, to }: { from: number; to: number }, format: Format): string {
  return `${format.length(from)}–${format.length(to)}`;
}
