// Everything the title block of a board drawing says, and the heading of its pages.

import { projectionSymbol } from "../projectionSymbol";
import { scaleText } from "./scales";
import { type SheetContext, footCells } from "./sheetContext";
import { allowancesText, jobTitle, sheetText } from "./templatePart";
import type { Cell } from "./titleBlock";

/** The fields of one piece at a scale (paper mm a real mm); `sheet` is the number of the sheet, `sheets` of how many. */
export function boardCells(context: SheetContext, index: number, scale: number, sheet = 1, sheets = 1): Cell[] {
  const { development, fabrication, figures, words } = context;
  const { field } = words;
  const made = fabrication.pieces[index];
  const { projection } = development.job.drawing;
  return [
    { label: field.job, value: jobTitle(development, words), height: 5, large: 2 },
    { label: field.document, value: [words.document.board, words.conventions] },
    { label: field.piece, value: words.pieceOf(index + 1, development.pieces.length) },
    ...(made ? [{ label: field.sheet, value: sheetText(made, development.job.fabrication, figures, words) }, { label: field.allowances, value: allowancesText(made, figures, words) }] : []),
    ...footCells(context, scaleText(scale), words.sheetOf(sheet, sheets)),
    { label: field.projection, value: "", drawn: { width: 28, height: 10, items: (middle) => projectionSymbol(projection, { x: middle.x - 5, y: middle.y }, 0.6) } },
    { label: field.drawn, value: "          " }, { label: field.checked, value: "          " }, { label: field.number, value: "          " },
  ];
}

/** "Vent · Views and flat pattern · 1:2" */
export function boardHeading({ development, words }: SheetContext, scale: number): string {
  return `${jobTitle(development, words)} · ${words.document.board} · ${scaleText(scale)}`;
}

/** That of the scale that takes most letters. */
export function longestBoardHeading(context: SheetContext): string {
  return boardHeading(context, 1 / 1000);
}
