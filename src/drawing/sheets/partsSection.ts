// The part list on as many pages as it takes.

import type { PartRow } from "../../core/index";
import { LETTERING } from "../lettering";
import { polygon } from "../strokes";
import { layoutsFor } from "./layouts";
import { paperField } from "./paperField";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf, footCells } from "./sheetContext";
import { jobTitle, sheetText } from "./templatePart";
import { type Column, type Table, table } from "./table";
import { corners, titleBlock } from "./titleBlock";

/** Round the table, mm. */
const AIR = 5;

/** Longest line of a name and height of letters, mm: what is tried in turn until the table is no wider than its page. */
const STYLES = [{ most: 45, lettering: LETTERING }, { most: 24, lettering: LETTERING }, { most: 20, lettering: 2.5 }, { most: 13, lettering: 1.8 }] as const;

type Style = (typeof STYLES)[number];

const INCH = 25.4;

/** One row a part and the mass of all; upright paper where the table is no wider. */
export function partsSection(context: SheetContext): Section {
  const { words, setup, fabrication } = context;
  const rows = fabrication.parts.map((row, i) => rowOf(context, row, i));
  const layouts = layoutsFor(setup, { width: 400, height: 400 });
  const tries = STYLES.flatMap((style) => layouts.map((layout) => ({ style, layout })));
  const fits = tries.find(({ style, layout }) => tableOf(context, rows, style).width <= roomOf(context, layout).width) ?? tries.at(-1);
  if (!fits) throw new RangeError("no paper");
  const { style, layout } = fits;
  const { paper, landscape } = layout;
  const field = paperField(paper, landscape, setup);
  const split = splitRows(context, rows, style, roomOf(context, layout).height);
  const pages = split.map((own, i) => {
    const sheet = words.sheetOf(i + 1, split.length);
    const { items, room } = bandsOf(context, field, paper, `${jobTitle(context.development, words)} · ${words.document.parts}`, sheet);
    const block = blockOf(context, room.right - room.left, sheet);
    const listed = tableOf(context, own, style, i === split.length - 1).at({ x: room.left + AIR, y: room.top - AIR });
    return pageOn(field, String(i + 1), [...items, polygon("frame", corners(room)), ...block.at({ x: room.left, y: room.bottom }), ...listed]);
  });
  return { kind: "parts", title: words.document.parts, layout: "one", paper: paper.name, landscape, columns: 1, rows: 1, scale: 1, pages };
}

function roomOf(context: SheetContext, { paper, landscape }: ReturnType<typeof layoutsFor>[number]): { width: number; height: number } {
  const { room } = bandsOf(context, paperField(paper, landscape, context.setup), paper, "");
  return { width: room.right - room.left - 2 * AIR, height: room.top - room.bottom - 2 * AIR - blockOf(context, room.right - room.left, "1").height };
}

function blockOf(context: SheetContext, width: number, sheet: string) {
  const { development, words } = context;
  const { field } = words;
  return titleBlock([
    { label: field.job, value: jobTitle(development, words), height: 5, most: 2 }, { label: field.document, value: words.document.parts },
    ...footCells(context, words.noScale, sheet),
  ], width);
}

/** As many rows on a page as its height takes, at least one. */
function splitRows(context: SheetContext, rows: readonly (readonly string[])[], style: Style, height: number): (readonly string[])[][] {
  const pages: (readonly string[])[][] = [[]];
  for (const row of rows) {
    const page = pages.at(-1) ?? [];
    if (page.length > 0 && tableOf(context, [...page, row], style).height > height) pages.push([row]);
    else page.push(row);
  }
  return pages;
}

/** With the sum of the masses under the last rows. */
function tableOf({ fabrication, words, development: { job } }: SheetContext, rows: readonly (readonly string[])[], { most, lettering }: Style, ends = true): Table {
  const { partList: said } = words;
  const unit = job.units === "inch" ? "in" : "mm";
  const area = job.units === "inch" ? "in²" : "m²";
  const columns: Column[] = [
    { head: said.number, align: "end" }, { head: said.name, align: "start", most }, { head: said.quantity, align: "end" }, { head: said.material, align: "start", most },
    { head: `${said.blank} ${unit}`, align: "end" }, { head: `${said.area} ${area}`, align: "end" }, { head: `${said.cutLength} ${unit}`, align: "end" },
    { head: `${said.mass} kg`, align: "end" }, { head: `${said.totalMass} kg`, align: "end" },
  ];
  const sum = fabrication.parts.reduce((total, { totalMass }) => total + totalMass, 0);
  const together = ["", said.total, "", "", "", "", "", "", mass(sum)];
  return table(columns, ends ? [...rows, together] : rows, { last: ends, lettering });
}

function rowOf({ fabrication, figures, words, development: { job } }: SheetContext, row: PartRow, index: number): string[] {
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
