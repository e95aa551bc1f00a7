// Everything the title block of a template says.

import { type SheetContext, footCells } from "./sheetContext";
import type { TemplatePart } from "./templatePart";
import type { Cell } from "./titleBlock";

/** The part's own fields, scale, sheet and date, and what to mind; `sheet` is the number of the sheet. */
export function templateCells(context: SheetContext, part: TemplatePart, sheet: string): Cell[] {
  const { words } = context;
  return [...part.cells, ...footCells(context, part.scale ?? words.fullSize, sheet), { label: words.field.cautions, value: part.cautions ?? words.cautions, wide: true }];
}
