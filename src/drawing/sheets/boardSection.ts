// The board drawing on framed sheets: views and pattern at a usual scale, title block, description and station table, which go on
// to a sheet of their own where the drawing leaves them no room.

import { growBox } from "../box";
import type { Item } from "../display";
import { moveItem } from "../moveItem";
import { polygon } from "../strokes";
import { boardCells, boardHeading, longestBoardHeading } from "./boardCells";
import { furnished, furnitureOf } from "./boardFurniture";
import { type BoardLayout, boardLayout } from "./boardLayout";
import type { Page } from "./page";
import { type Section, pageOn } from "./section";
import { type SheetContext, bandsOf } from "./sheetContext";
import { corners, titleBlock } from "./titleBlock";

/** Between the frame and what stands in it, mm. */
const AIR = 2.5;

/** What stands on one sheet beside frame and title block. */
interface Body {
  readonly piece: number;
  readonly drawn: BoardLayout;
  readonly items: readonly Item[];
}

/** The sheets of each piece, at the largest usual scale that fits, or at the scale asked for; null when that does not fit, nor what belongs to it. */
export function boardSection(context: SheetContext): Section | null {
  const { development: { pieces }, words } = context;
  const found = pieces.flatMap((_, i) => boardLayout(context, i) ?? []);
  const all = found.map((drawn, piece) => bodiesOf(context, drawn, piece));
  const [first] = found;
  if (!first || found.length < pieces.length || all.some((one) => one === null)) return null;
  const { layout: { paper, landscape }, scale } = first;
  const bodies = all.flatMap((one) => one ?? []);
  return { kind: "board", title: words.document.board, layout: "one", paper: paper.name, landscape, columns: 1, rows: 1, scale, pages: bodies.map((body, i) => pageOf(context, body, i + 1, bodies.length)) };
}

/** The drawing with what it leaves room for, then the rest; null when that finds no room on a sheet of its own. */
function bodiesOf(context: SheetContext, drawn: BoardLayout, piece: number): Body[] | null {
  const { board, move, frame, corner, taken } = drawn;
  const window = growBox(frame, -AIR);
  const beside = furnished(furnitureOf(context, piece), window, taken);
  const first: Body = { piece, drawn, items: [...board.items.map((item) => moveItem(item, move)), ...beside.items] };
  const bodies = [first];
  let rest = furnitureOf(context, piece, { width: window.right - window.left, height: window.top - corner.top }).filter(({ name }) => beside.left.some((one) => one.name === name));
  while (rest.length > 0) {
    const { items, left } = furnished(rest, window, [corner], true);
    if (left.length === rest.length) return null;
    bodies.push({ piece, drawn, items });
    rest = [...left];
  }
  return bodies;
}

function pageOf(context: SheetContext, { piece, drawn: { layout: { paper }, field, scale, frame, corner }, items }: Body, sheet: number, sheets: number): Page {
  const { words } = context;
  const bands = bandsOf(context, field, paper, boardHeading(context, scale), words.sheetOf(sheet, sheets), "", longestBoardHeading(context));
  const block = titleBlock(boardCells(context, piece, scale, sheet, sheets), corner.right - corner.left);
  return pageOn(field, String(sheet), [...bands.items, polygon("frame", corners(frame)), ...block.at({ x: corner.left, y: corner.bottom }), ...items]);
}
