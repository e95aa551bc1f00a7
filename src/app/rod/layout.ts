import type { Piece } from "../../core/index";

// Where the rod and the columns of its table stand, in CSS pixels.

export interface RodLayout {
  /** Width of one column of figures. */
  readonly column: number;
  /** Left edge of the first column. */
  readonly left: number;
  /** Whether all columns stand under the rod; else the table is wider and scrolls. */
  readonly fits: boolean;
  /** x of every station on the rod. */
  readonly ticks: readonly number[];
  /** Every so-manieth station is numbered on the rod. */
  readonly numbered: number;
}

const nameColumn = 118;
const leastColumn = 46;
const numberWidth = 24;
const narrow = 640;

/** On a narrow screen the rod takes the whole width and the names of the rows stand in the scrolling table. */
export function rodLayout(piece: Piece, width: number, cellCharacters: number): RodLayout {
  const count = piece.stations.length;
  const least = Math.max(leastColumn, cellCharacters * 7 + 12);
  const space = width - nameColumn - 8;
  const fits = width >= narrow && count * least <= space;
  const column = fits ? space / count : least;
  const first = fits ? nameColumn + column / 2 : 18;
  const last = fits ? nameColumn + column * (count - 0.5) : Math.max(first + 1, width - 18);
  const perMm = (last - first) / piece.form.girth;
  const ticks = piece.stations.map((station) => first + station.girth * perMm);
  const numbered = Math.max(1, Math.ceil((numberWidth * count) / (last - first)));
  return { column, left: nameColumn, fits, ticks, numbered };
}

/** The station nearest to this x on the rod. */
export function nearestTick(ticks: readonly number[], x: number): number {
  let best = 0;
  ticks.forEach((tick, i) => {
    if (Math.abs(tick - x) < Math.abs((ticks[best] ?? 0) - x)) best = i;
  });
  return best;
}
