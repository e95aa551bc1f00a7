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
  return [
    row(table.angle, (station) => format.angle(directionOf(station.theta))),
    row(table.girth(format.trade), (station) => format.length(station.girth)),
    row(table.top[attitude], (station) => endText(station, highest, format)),
    row(table.bottom[attitude], (station) => endText(station, lowest, format)),
    row(table.length(format.trade), (station) => format.length(station.length)),
    ...(piece.stations.some((station) => station.openings.length)
      ? [row(table.from, (station) => gapTexts(station, "from", format)), row(table.to, (station) => gapTexts(station, "to", format))]
      : []),
  ];
}

type Stretches = Station["before"];

const highest = (stretches: Stretches) => stretches.at(-1)?.to;
const lowest = (stretches: Stretches) => stretches[0]?.from;

/** The ordinate of one end; where an edge runs along the element, that just before it and that just after it. */
function endText({ before, after }: Station, of: (stretches: Stretches) => number | undefined, format: Format): string {
  const texts = [before, after].map((side) => {
    const height = of(side);
    return height === undefined ? words.table.none : format.length(height);
  });
  return [...new Set(texts)].join(" | ");
}

/** A direction in radians as degrees from the front, 0 to under 360. */
export function directionOf(theta: number): number {
  const angle = degrees(theta) % 360;
  // Rounded to a millionth of a degree, so that a whole turn less rounding noise reads 0 and not 360.
  return (Math.round((angle + 360) * 1e6) / 1e6) % 360;
}

/** Where the openings of the element begin or end, low to high. */
function gapTexts({ openings }: Station, limit: "from" | "to", format: Format): string {
  return openings.map((gap) => format.length(gap[limit])).join(" · ") || words.table.none;
}
