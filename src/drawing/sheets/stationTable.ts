// The stations of a piece as a table on paper.

import type { Piece } from "../../core/index";
import type { Figures } from "../figures";
import type { SheetWords } from "./sheetWords";
import { type Table, table } from "./table";

/** One row a station; what is cut away at a station is a dash. */
export function stationTable({ stations }: Piece, figures: Figures, { stationTable: said }: SheetWords): Table {
  const figure = (value: number | null) => (value === null ? "–" : figures.length(value));
  return table(
    [
      { head: said.station, align: "start" }, { head: said.girth, align: "end" }, { head: said.bottom, align: "end" }, { head: said.top, align: "end" },
      { head: said.length, align: "end" },
    ],
    stations.map(({ label, girth, bottom, top, length }) => [label, figure(girth), figure(bottom), figure(top), figure(length)]),
  );
}
