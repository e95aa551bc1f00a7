// The stations of a piece as a table on paper.

import type { Piece, Station } from "../../core/index";
import type { Figures } from "../figures";
import type { SheetWords } from "./sheetWords";
import { type Column, type Table, table } from "./table";

/** mm: a height under this is the base line itself. */
const NOTHING = 1e-6;

/** Longest lines of the openings in a narrow table, mm: one ordinate with its dash. */
const NARROW = 20;

export interface TableRoom {
  readonly width: number;
  readonly height: number;
}

/** One row a station; what is cut away at a station is a dash, a column of nothing but base line is left out. Openings it runs through are given from their lower to their upper edge, in a narrow table in two lines. */
export function stationTable(piece: Piece, figures: Figures, words: SheetWords, isNarrow = false): Table {
  return tableOf(piece, piece.stations, figures, words, isNarrow);
}

/** The same in as few tables as it takes that none is higher than the room, narrow where it is too wide for it. */
export function stationTables(piece: Piece, figures: Figures, words: SheetWords, { width, height }: TableRoom): Table[] {
  const isNarrow = stationTable(piece, figures, words).width > width;
  const make = (stations: readonly Station[]) => tableOf(piece, stations, figures, words, isNarrow);
  const head = make([]).height;
  const parts: Station[][] = [];
  let room = 0;
  for (const station of piece.stations) {
    const row = make([station]).height - head;
    if (row > room) {
      parts.push([]);
      room = height - head;
    }
    parts.at(-1)?.push(station);
    room -= row;
  }
  return parts.map(make);
}

function tableOf(piece: Piece, stations: readonly Station[], figures: Figures, { stationTable: said }: SheetWords, isNarrow: boolean): Table {
  const figure = (value: number | null) => (value === null ? "–" : figures.length(value));
  const hasBottom = piece.stations.some(({ bottom }) => bottom !== null && Math.abs(bottom) > NOTHING);
  const hasOpening = piece.stations.some(({ openings }) => openings.length > 0);
  const right = (head: string): Column => ({ head, align: "end" });
  return table(
    [
      { head: said.station, align: "start" }, right(said.girth), ...(hasBottom ? [right(said.bottom)] : []), right(said.top),
      ...(hasOpening ? [{ ...right(said.opening), ...(isNarrow && { most: NARROW }) }] : []), right(said.length),
    ],
    stations.map(({ label, girth, bottom, top, openings, length }) => [
      label, figure(girth), ...(hasBottom ? [figure(bottom)] : []), figure(top),
      ...(hasOpening ? [openings.map(({ from, to }) => `${figures.length(from)} – ${figures.length(to)}`).join(", ")] : []), figure(length),
    ]),
  );
}
