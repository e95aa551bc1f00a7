// The part list on as many pages as it takes.

import { polygon } from "../strokes";
import { layoutsFor } from "./layouts";
import { paperField } from "./paperField";
import { type PartTable, partTable } from "./partTable";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf, footCells } from "./sheetContext";
import { jobTitle } from "./templatePart";
import { corners, titleBlock } from "./titleBlock";

/** Round the table, mm. */
const AIR = 5;

/** One row a part and the mass of all; upright paper where the table is no wider, and where it is wider than the paper either way. */
export function partsSection(context: SheetContext): Section {
  const { words, setup } = context;
  const list = partTable(context);
  const layouts = layoutsFor(setup, { width: 400, height: 400 });
  const layout = layouts.find((one) => list.least <= roomOf(context, one).width) ?? layouts[0];
  if (!layout) throw new RangeError("no paper");
  const { paper, landscape } = layout;
  const field = paperField(paper, landscape, setup);
  const split = splitRows(list, roomOf(context, layout));
  const pages = split.map((own, i) => {
    const sheet = words.sheetOf(i + 1, split.length);
    const { items, room } = bandsOf(context, field, paper, headingOf(context), sheet);
    const block = blockOf(context, room.right - room.left, sheet);
    const listed = list.of(own, room.right - room.left - 2 * AIR, i === split.length - 1).at({ x: room.left + AIR, y: room.top - AIR });
    return pageOn(field, String(i + 1), [...items, polygon("frame", corners(room)), ...block.at({ x: room.left, y: room.bottom }), ...listed]);
  });
  return { kind: "parts", title: words.document.parts, layout: "one", paper: paper.name, landscape, columns: 1, rows: 1, scale: 1, pages };
}

function headingOf({ development, words }: SheetContext): string {
  return `${jobTitle(development, words)} · ${words.document.parts}`;
}

interface Room {
  readonly width: number;
  readonly height: number;
}

function roomOf(context: SheetContext, { paper, landscape }: ReturnType<typeof layoutsFor>[number]): Room {
  const { room } = bandsOf(context, paperField(paper, landscape, context.setup), paper, headingOf(context));
  return { width: room.right - room.left - 2 * AIR, height: room.top - room.bottom - 2 * AIR - blockOf(context, room.right - room.left, "1").height };
}

function blockOf(context: SheetContext, width: number, sheet: string) {
  const { development, words } = context;
  const { field } = words;
  return titleBlock([
    { label: field.job, value: jobTitle(development, words), height: 5, large: 2 }, { label: field.document, value: words.document.parts },
    ...footCells(context, words.noScale, sheet),
  ], width);
}

/** As many rows on a page as its height takes with the sum under them, at least one. */
function splitRows(list: PartTable, { width, height }: Room): PartTable["rows"][] {
  const pages: PartTable["rows"][number][][] = [[]];
  for (const row of list.rows) {
    const page = pages.at(-1) ?? [];
    if (page.length > 0 && list.of([...page, row], width, true).height > height) pages.push([row]);
    else page.push(row);
  }
  return pages;
}
