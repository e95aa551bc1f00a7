// The rows of a part list: a table where the paper is wide enough for one, else a ruled block of fields for each part, so that letters
// keep their height on any paper.

import type { PartRow } from "../../core/index";
import type { SheetContext } from "./sheetContext";
import { type Column, type Table, table } from "./table";
import { sheetText } from "./templatePart";
import { titleBlock } from "./titleBlock";

const INCH = 25.4;

/** Between blocks of fields, mm. */
const BETWEEN = 3;

/** Longest lines of a name, mm: what is tried in turn until the table is no wider than its page. */
const LONGEST = [45, 24] as const;

/** What one part says, column by column. */
type Row = readonly string[];

export interface PartTable {
  readonly rows: readonly Row[];
  /** The width of the narrowest table, mm; blocks of fields are as narrow as they are asked to be. */
  readonly least: number;
  /** Some of the rows, no wider than `width` mm; with the sum of all masses under the last. */
  readonly of: (rows: readonly Row[], width: number, ends: boolean) => Table;
}

/** The list of all parts of a fabrication. */
export function partTable(context: SheetContext): PartTable {
  const rows = context.fabrication.parts.map((row, i) => rowOf(context, row, i));
  const wide = (most: number) => (some: readonly Row[], ends: boolean) => table(columnsOf(context, most), ends ? [...some, sumOf(context)] : some, { last: ends });
  const tries = LONGEST.map((most) => ({ make: wide(most), width: wide(most)(rows, true).width }));
  return {
    rows, least: Math.min(...tries.map(({ width }) => width)),
    of: (some, width, ends) => tries.find((one) => one.width <= width)?.make(some, ends) ?? blocks(context, some, width, ends),
  };
}

function columnsOf({ words: { partList: said }, development: { job } }: SheetContext, most: number): Column[] {
  const [unit, area] = job.units === "inch" ? ["in", "in²"] : ["mm", "m²"];
  return [
    { head: said.number, align: "end" }, { head: said.name, align: "start", most }, { head: said.quantity, align: "end" }, { head: said.material, align: "start", most },
    { head: `${said.blank} ${unit}`, align: "end" }, { head: `${said.area} ${area}`, align: "end" }, { head: `${said.cutLength} ${unit}`, align: "end" },
    { head: `${said.mass} kg`, align: "end" }, { head: `${said.totalMass} kg`, align: "end" },
  ];
}

/** One block of fields a part under the other, and the sum in one of its own. */
function blocks(context: SheetContext, rows: readonly Row[], width: number, ends: boolean): Table {
  const heads = columnsOf(context, width).map(({ head }) => head);
  const fields = (row: Row) => row.flatMap((value, i) => (value === "" ? [] : [{ label: heads[i] ?? "", value }]));
  const all = [...rows, ...(ends ? [sumOf(context)] : [])].map((row) => titleBlock(fields(row), width));
  const foot = (i: number) => all.slice(0, i + 1).reduce((sum, { height }) => sum + height, i * BETWEEN);
  return { width, height: foot(all.length - 1), at: ({ x, y }) => all.flatMap((block, i) => block.at({ x, y: y - foot(i) })) };
}

/** The row under all: the mass of everything. */
function sumOf({ fabrication, words: { partList: said } }: SheetContext): Row {
  return ["", said.total, "", "", "", "", "", "", mass(fabrication.parts.reduce((total, { totalMass }) => total + totalMass, 0))];
}

function rowOf({ fabrication, figures, words, development: { job } }: SheetContext, row: PartRow, index: number): Row {
  const made = [...fabrication.pieces, ...fabrication.plates][index];
  const area = job.units === "inch" ? (row.blankArea / INCH ** 2).toFixed(1) : (row.blankArea / 1e6).toFixed(4);
  return [
    String(index + 1), row.name, String(row.quantity), made ? sheetText(made, job.fabrication, figures, words) : words.materials[row.material],
    `${figures.length(row.width)} × ${figures.length(row.height)}`, area, figures.length(row.cutLength), mass(row.mass), mass(row.totalMass),
  ];
}

/** kg; a dash where the thickness is not known. */
function mass(kg: number): string {
  return kg > 0 ? kg.toFixed(3) : "–";
}
