import type { Piece } from "../../core/index";
import { roundStep } from "../../drawing/station/girthUnder";

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
  /** Whether the figures are set a size smaller to stand under the rod. */
  readonly dense: boolean;
  /** Which stations have room for their number on the rod. */
  readonly numbered: readonly boolean[];
}

/** Width of the names of the rows: beside the rod, before a room and on a narrow screen, where they are set larger. */
const nameColumn = { wide: 126, room: 148, narrow: 126 };
const narrow = 960, room = 1760;

/** Width of a figure and of the space beside a cell, in the usual size and a size smaller. */
const usual = { figure: 8.5, space: 10 };
const small = { figure: 7.8, space: 5 };

/** Room for a number on the rod, by its signs. */
const numberWidth = (label: string) => 8 * label.length + 9;

/** On a narrow screen the rod takes the whole width and the names of the rows stand in the scrolling table. */
export function rodLayout(piece: Piece, width: number, cellCharacters: number): RodLayout {
  const count = piece.stations.length;
  const least = ({ figure, space }: typeof usual) => Math.max(38, cellCharacters * figure + space);
  const left = width < narrow ? nameColumn.narrow : width < room ? nameColumn.wide : nameColumn.room;
  const space = (width - left - 8) / count;
  const fits = width >= narrow && least(small) <= space;
  const column = fits ? space : least(usual);
  const first = fits ? left + column / 2 : 18;
  const last = fits ? left + column * (count - 0.5) : Math.max(first + 1, width - 18);
  const perMm = (last - first) / piece.form.girth;
  const ticks = piece.stations.map((station) => first + station.girth * perMm);
  return { column, left, fits, dense: fits && space < least(usual), ticks, numbered: numberedTicks(piece, ticks) };
}

/** Both ends first, then even stations as regularly as they fit, then others where room is left. */
function numberedTicks({ stations }: Piece, ticks: readonly number[]): boolean[] {
  const numbered = stations.map(() => false);
  const taken: { from: number; to: number }[] = [];
  const take = (i: number) => {
    const x = ticks[i] ?? 0;
    const half = numberWidth(stations[i]?.label ?? "") / 2;
    if (taken.some(({ from, to }) => x - half < to && x + half > from)) return;
    taken.push({ from: x - half, to: x + half });
    numbered[i] = true;
  };
  const even = stations.flatMap((station, i) => (station.mark === "even" ? [i] : []));
  const room = numberWidth(String(even.length)) / (((ticks.at(-1) ?? 0) - (ticks[0] ?? 0)) / even.length);
  const every = [1, 2, 3, 5, 10, 15, 20, 30, 60].find((step) => step >= room) ?? 90;
  const others = every === 1 ? stations.keys() : [];
  for (const i of [0, stations.length - 1, ...even.filter((_, k) => k % every === 0), ...others]) take(i);
  return numbered;
}

/** The station nearest to this x on the rod. */
export function nearestTick(ticks: readonly number[], x: number): number {
  let best = 0;
  ticks.forEach((tick, i) => {
    if (Math.abs(tick - x) < Math.abs((ticks[best] ?? 0) - x)) best = i;
  });
  return best;
}

/** The place on the girth at this x on the rod, mm, rounded to a step no coarser than a pixel. */
export function girthAtTick({ ticks }: Pick<RodLayout, "ticks">, { form: { girth } }: Pick<Piece, "form">, x: number): number {
  const first = ticks[0] ?? 0, last = ticks.at(-1) ?? first + 1;
  const step = roundStep(girth / (last - first));
  return Math.min(girth, Math.max(0, Math.round(((x - first) / (last - first)) * (girth / step)) * step));
}
